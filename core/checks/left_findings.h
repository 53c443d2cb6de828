// SPDX-License-Identifier: MIT
// What the checks still find of a bed that has been filled, and why it could not be avoided.
#pragma once

#include <string>
#include <vector>

#include "core/checks/registry.h"
#include "core/planting/fill.h"

namespace tussock {

// Sentences; none when nothing is found of this bed.
[[nodiscard]] std::vector<std::string> whatIsLeft(const CheckInput& input, Id<Bed> bed,
                                                  const FillResult& result);

}  // namespace tussock
