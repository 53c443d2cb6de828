// SPDX-License-Identifier: MIT
#include "core/planting/slope.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

Ring mapped(const Slope& slope, const Ring& ring) {
  Ring result;
  result.reserve(ring.size());
  for (const Point p : ring) result.push_back(slope.onGround(p));
  return result;
}

}  // namespace

Slope::Slope(const Settings& settings) {
  const double steep = std::abs(settings.slope.radians());
  if (!std::isfinite(steep) || steep == 0.0) return;
  stretch_ = 1.0 / std::cos(std::min(steep, Angle::degrees(80).radians()));
  more_ = stretch_ - 1.0;
  less_ = 1.0 - 1.0 / stretch_;
  down_ = directionOf(settings.aspect);
}

Polygon Slope::onGround(const Polygon& plan) const {
  if (level()) return plan;
  Polygon result{mapped(*this, plan.outer), {}};
  for (const Ring& hole : plan.holes) result.holes.push_back(mapped(*this, hole));
  return result;
}

Angle Slope::onGround(Angle axis) const {
  if (level()) return axis;
  const Point along = onGround(Point{std::cos(axis.radians()), std::sin(axis.radians())});
  return Angle::radians(std::atan2(along.y, along.x));
}

double Slope::distance(Point a, Point b) const {
  return tussock::distance(onGround(a), onGround(b));
}

}  // namespace tussock
