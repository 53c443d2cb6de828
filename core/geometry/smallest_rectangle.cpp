// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/geometry/overlay.h"

namespace tussock {

namespace {

struct Extent {
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();
  void include(double value) { low = std::min(low, value), high = std::max(high, value); }
  [[nodiscard]] double size() const { return high - low; }
  [[nodiscard]] double middle() const { return (low + high) / 2.0; }
};

OrientedRectangle rectangleAlong(const std::vector<Point>& points, Point along, double radius) {
  const Point across{-along.y, along.x};
  Extent u;
  Extent v;
  for (const Point p : points) u.include(dot(p, along)), v.include(dot(p, across));
  OrientedRectangle result;
  result.centre = along * u.middle() + across * v.middle();
  result.length = u.size() + 2.0 * radius;
  result.width = v.size() + 2.0 * radius;
  double axis = std::atan2(along.y, along.x);
  if (result.width > result.length) {
    std::swap(result.length, result.width);
    axis += std::numbers::pi / 2.0;
  }
  axis = std::fmod(axis + 2.0 * std::numbers::pi, std::numbers::pi);
  result.axis = Angle::radians(axis);
  return result;
}

}  // namespace

// The smallest rectangle has a side along an edge of the convex hull (Freeman and Shapira 1975).
OrientedRectangle smallestRectangle(const std::vector<Point>& points, Length radius) {
  if (points.empty()) return {};
  const double r = radius.metres();
  OrientedRectangle best = rectangleAlong(points, {1.0, 0.0}, r);
  std::vector<Point> hull = points.size() > 2 ? convexHull(points) : points;
  if (hull.size() < 2) hull = points;
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const Point edge = hull[(i + 1) % hull.size()] - hull[i];
    const double length = std::hypot(edge.x, edge.y);
    if (length < 1e-9) continue;
    const OrientedRectangle candidate = rectangleAlong(points, edge * (1.0 / length), r);
    if (candidate.length * candidate.width < best.length * best.width - 1e-12) best = candidate;
  }
  return best;
}

}  // namespace tussock
