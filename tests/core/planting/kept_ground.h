// SPDX-License-Identifier: MIT
// How far a drift that was planted anew stands on the ground that it had.
#pragma once

#include "core/planting/edit_drift.h"
#include "core/planting/slope.h"

namespace tussock::test {

[[nodiscard]] Species named(std::string name, double spacing);  // metres

// Metres of the plan; 0 inside.
[[nodiscard]] double outside(const std::vector<Polygon>& outline, Point p);
// Of the plants those within half the old spacing of the old outline.
[[nodiscard]] double shareOnGround(const Drift& before, const Drift& after);
// Of the old outline's ground what is within one new spacing of a plant.
[[nodiscard]] double shareTaken(const Slope& slope, const Drift& before, const Drift& after);

}  // namespace tussock::test
