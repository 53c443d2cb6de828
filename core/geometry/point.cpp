// SPDX-License-Identifier: MIT
#include "core/geometry/point.h"

#include <algorithm>
#include <numbers>

namespace tussock {

Point rotated(Point p, Angle turn, Point centre) {
  const double c = std::cos(turn.radians());
  const double s = std::sin(turn.radians());
  const Point d = p - centre;
  return {centre.x + d.x * c - d.y * s, centre.y + d.x * s + d.y * c};
}

Point directionOf(Angle azimuth) {
  return {std::sin(azimuth.radians()), std::cos(azimuth.radians())};
}

Angle azimuthOf(Point vector) {
  const double angle = std::atan2(vector.x, vector.y);
  return Angle::radians(angle < 0.0 ? angle + 2.0 * std::numbers::pi : angle);
}

void Box::include(Point p) {
  low = {std::min(low.x, p.x), std::min(low.y, p.y)};
  high = {std::max(high.x, p.x), std::max(high.y, p.y)};
}

void Box::include(const Box& other) {
  if (other.empty()) return;
  include(other.low);
  include(other.high);
}

Box Box::grown(double metres) const {
  if (empty()) return *this;
  return {{low.x - metres, low.y - metres}, {high.x + metres, high.y + metres}};
}

bool Box::contains(Point p) const {
  return p.x >= low.x && p.x <= high.x && p.y >= low.y && p.y <= high.y;
}

bool Box::overlaps(const Box& other) const {
  return low.x <= other.high.x && other.low.x <= high.x && low.y <= other.high.y &&
         other.low.y <= high.y;
}

Box boundsOf(const Polyline& points) {
  Box box;
  for (const Point p : points) box.include(p);
  return box;
}

}  // namespace tussock
