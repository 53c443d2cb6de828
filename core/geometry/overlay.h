// SPDX-License-Identifier: MIT
// Set operations and offsets of polygons (Boost.Geometry behind them). Results are normalised and
// may be several pieces or none. Slivers under 1e-8 m² are dropped.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

[[nodiscard]] std::vector<Polygon> intersection(const Polygon& a, const Polygon& b);
[[nodiscard]] std::vector<Polygon> difference(const Polygon& a, const Polygon& b);
[[nodiscard]] std::vector<Polygon> unionOf(const std::vector<Polygon>& parts);
[[nodiscard]] bool intersects(const Polygon& a, const Polygon& b);
[[nodiscard]] bool crosses(const Polyline& line, const Polygon& polygon);

// The ground at least `by` inside the edge; what is left after a set-back.
[[nodiscard]] std::vector<Polygon> inset(const Polygon& polygon, Length by);
[[nodiscard]] std::vector<Polygon> outset(const Polygon& polygon, Length by);
// The same with corners kept sharp, as eaves are; very sharp ones are cut off at five times `by`.
[[nodiscard]] std::vector<Polygon> mitredOutset(const Polygon& polygon, Length by);
// A strip of the given full width along a line, mitred, flat ends.
[[nodiscard]] std::vector<Polygon> strip(const Polyline& line, Length width);
// One soft outline that wraps discs of `radius` around the points, bridging gaps up to `bridge`.
[[nodiscard]] std::vector<Polygon> wrapAround(const std::vector<Point>& points, Length radius,
                                              Length bridge);
[[nodiscard]] Ring convexHull(const std::vector<Point>& points);

struct OrientedRectangle {
  Point centre;
  double length = 0.0;  // metres, the longer side
  double width = 0.0;   // metres
  Angle axis;           // of the longer side, anticlockwise from east, 0 to pi
};
// Smallest-area rectangle around discs of `radius` at the points.
[[nodiscard]] OrientedRectangle smallestRectangle(const std::vector<Point>& points, Length radius);

}  // namespace tussock
