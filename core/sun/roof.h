// SPDX-License-Identifier: MIT
// Roofs as heights over the ground, made into convex bodies.
#pragma once

#include <vector>

#include "core/model/solids.h"
#include "core/sun/solids.h"

namespace tussock {

// The bodies of one building, without a group, on ground that rises by `rise` (see Horizon). Walls
// reach down to the ground; eave, ridge and base are level, measured from the ground at the middle
// of the footprint. Empty when its heights are no heights.
[[nodiscard]] std::vector<ConvexSolid> bodiesOf(const Building& building, Point rise = {});

}  // namespace tussock
