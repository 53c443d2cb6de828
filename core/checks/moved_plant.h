// SPDX-License-Identifier: MIT
// What a plant would break at another place, to be shown while it is moved.
#pragma once

#include "core/checks/checks.h"
#include "core/checks/plant_rules.h"

namespace tussock {

// The findings of spacing, set-back and obstacles that concern this plant, were it to stand at
// `to`; each measured for this plant alone. Empty when it breaks nothing or is not there.
[[nodiscard]] std::vector<Finding> findingsAt(const Survey& survey, Id<Drift> drift,
                                              Id<Plant> plant, Point to);

}  // namespace tussock
