// SPDX-License-Identifier: MIT
// A polygon cut into convex pieces that do not overlap.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

// One piece when the polygon is convex and has no holes; else trapezoids between its corners'
// levels in the frame of its longest edge, so that a house with square corners is cut into few. Of
// an outline that crosses itself what it goes round an odd number of times is inside.
// Empty when it encloses no ground or a corner is not finite.
[[nodiscard]] std::vector<Ring> convexPieces(const Polygon& polygon);

// Part of segment a-b inside a convex anticlockwise ring: both ends, or nothing.
[[nodiscard]] std::vector<Point> clippedTo(const Ring& convex, Point a, Point b);

}  // namespace tussock
