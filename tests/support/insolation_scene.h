// SPDX-License-Identifier: MIT
// The yard of blocks and walls of tests/data/insolation, on which GRASS GIS r.sun was run.
#pragma once

#include <string>

#include "core/model/yard.h"

namespace tussock::test {

// From the scene.csv of a folder; the blocks drawn in all round by so many metres.
[[nodiscard]] Yard insolationYard(const std::string& folder, double drawnIn = 0.0);

}  // namespace tussock::test
