// SPDX-License-Identifier: MIT
// Polygons with holes, and what can be asked of them. Rings are open (the first point is not
// repeated); outer rings run anticlockwise and holes clockwise once normalised().
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/geometry/point.h"

namespace tussock {

using Ring = std::vector<Point>;

struct Polygon {
  Ring outer;
  std::vector<Ring> holes;

  bool operator==(const Polygon&) const = default;
  [[nodiscard]] bool empty() const { return outer.empty(); }
};

enum class Invalidity {
  TooFewPoints,
  NotFinite,
  NoArea,
  CrossesItself,
  HoleOutside,
  HoleInHole,
  RepeatedPoint
};

// Why a polygon cannot be used, or nothing when it can.
[[nodiscard]] std::optional<Invalidity> invalidityOf(const Polygon& polygon);
[[nodiscard]] std::string_view explain(Invalidity reason);

[[nodiscard]] Polygon normalised(Polygon polygon);  // orientation and repeated points set right
[[nodiscard]] Area areaOf(const Polygon& polygon);
[[nodiscard]] double signedArea(const Ring& ring);  // square metres, anticlockwise positive
[[nodiscard]] Length perimeterOf(const Polygon& polygon);
[[nodiscard]] Point centroidOf(const Polygon& polygon);
[[nodiscard]] Box boundsOf(const Polygon& polygon);
// A point well inside, for labels: near the pole of inaccessibility.
[[nodiscard]] Point labelPoint(const Polygon& polygon);

[[nodiscard]] bool contains(const Ring& ring, Point p);
[[nodiscard]] bool contains(const Polygon& polygon, Point p);  // the boundary counts as inside
// Metres from p to the nearest edge (of outer ring or hole), inside or outside.
[[nodiscard]] double distanceToEdge(const Polygon& polygon, Point p);
[[nodiscard]] Point nearestOnEdge(const Polygon& polygon, Point p);
[[nodiscard]] double distanceToSegment(Point p, Point a, Point b);
[[nodiscard]] Point nearestOnSegment(Point p, Point a, Point b);

[[nodiscard]] Polygon moved(Polygon polygon, Point step);
[[nodiscard]] Polygon rotated(Polygon polygon, Angle turn, Point centre);
[[nodiscard]] Polygon rectangle(Point low, Point high);
[[nodiscard]] Polygon disc(Point centre, Length radius, int sides = 32);

}  // namespace tussock
