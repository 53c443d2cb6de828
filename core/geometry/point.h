// SPDX-License-Identifier: MIT
// A point or step in site coordinates: metres, +x true east, +y true north.
#pragma once

#include <cmath>
#include <vector>

#include "core/units/length.h"

namespace tussock {

struct Point {
  double x = 0.0;  // metres east
  double y = 0.0;  // metres north

  bool operator==(const Point&) const = default;
  Point& operator+=(Point other) { return x += other.x, y += other.y, *this; }
  friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
  friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
  friend constexpr Point operator*(Point a, double k) { return {a.x * k, a.y * k}; }
};

[[nodiscard]] constexpr double dot(Point a, Point b) {
  return a.x * b.x + a.y * b.y;
}
[[nodiscard]] constexpr double cross(Point a, Point b) {
  return a.x * b.y - a.y * b.x;
}
[[nodiscard]] constexpr double squaredDistance(Point a, Point b) {
  return dot(a - b, a - b);
}
[[nodiscard]] inline double distance(Point a, Point b) {
  return std::sqrt(squaredDistance(a, b));
}
[[nodiscard]] inline bool isFinite(Point p) {
  return std::isfinite(p.x) && std::isfinite(p.y);
}

// Turned anticlockwise about `centre`.
[[nodiscard]] Point rotated(Point p, Angle turn, Point centre = {});
// Unit vector of a compass direction: azimuth 0 is north, 90 degrees east.
[[nodiscard]] Point directionOf(Angle azimuth);
// Azimuth of a vector, 0 to 2 pi clockwise from north.
[[nodiscard]] Angle azimuthOf(Point vector);

using Polyline = std::vector<Point>;

struct Box {
  Point low{1e300, 1e300};
  Point high{-1e300, -1e300};

  bool operator==(const Box&) const = default;
  [[nodiscard]] bool empty() const { return low.x > high.x || low.y > high.y; }
  [[nodiscard]] double width() const { return empty() ? 0.0 : high.x - low.x; }
  [[nodiscard]] double height() const { return empty() ? 0.0 : high.y - low.y; }
  [[nodiscard]] Point centre() const { return (low + high) * 0.5; }
  void include(Point p);
  void include(const Box& other);
  [[nodiscard]] Box grown(double metres) const;
  [[nodiscard]] bool contains(Point p) const;
  [[nodiscard]] bool overlaps(const Box& other) const;
};

[[nodiscard]] Box boundsOf(const Polyline& points);

}  // namespace tussock
