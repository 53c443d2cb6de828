// SPDX-License-Identifier: MIT
// What plants would break at another place, to be shown while they are moved.
#pragma once

#include "core/checks/checks.h"
#include "core/checks/plant_rules.h"

namespace tussock {

// The findings of spacing, set-back and obstacles that concern this plant, were it to stand at
// `to`, each measured for this plant alone; and which plants would then stand apart from their
// drift. Empty when it breaks nothing or is not there.
[[nodiscard]] std::vector<Finding> findingsAt(const Survey& survey, Id<Drift> drift,
                                              Id<Plant> plant, Point to);

// The same for a whole drift that would stand as `moved` does, all its plants moved alike: one
// finding for each rule and each thing or other drift, with the worst measure and all its plants.
[[nodiscard]] std::vector<Finding> findingsAt(const Survey& survey, const Drift& moved);

// The same for some plants of a drift, where they stand in the yard surveyed; against the others of
// the drift too.
[[nodiscard]] std::vector<Finding> findingsAt(const Survey& survey, Id<Drift> drift,
                                              const std::vector<Id<Plant>>& plants);

}  // namespace tussock
