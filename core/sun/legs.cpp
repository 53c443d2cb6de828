// SPDX-License-Identifier: MIT
#include "core/sun/legs.h"

#include <cmath>

namespace tussock {

namespace {

constexpr double kSquare = 0.035;  // sine of two degrees

Point unit(Point step) {
  return step * (1.0 / std::hypot(step.x, step.y));
}

// Sine of the turn at corner i; left is positive.
double turnAt(const Ring& ring, std::size_t i) {
  const std::size_t n = ring.size();
  const Point in = unit(ring[i] - ring[(i + n - 1) % n]);
  const Point out = unit(ring[(i + 1) % n] - ring[i]);
  return std::abs(dot(in, out)) < kSquare ? cross(in, out) : 0.0;
}

Ring withoutStraightCorners(const Ring& ring) {
  Ring result;
  for (std::size_t i = 0, n = ring.size(); i < n; ++i) {
    const Point in = unit(ring[i] - ring[(i + n - 1) % n]);
    const Point out = unit(ring[(i + 1) % n] - ring[i]);
    if (std::abs(cross(in, out)) > kSquare || dot(in, out) < 0.0) result.push_back(ring[i]);
  }
  return result;
}

// Where the line from a through b meets the one from c through d.
Point meeting(Point a, Point b, Point c, Point d) {
  return a + (b - a) * (cross(c - a, d - c) / cross(b - a, d - c));
}

// The corner where the walls turn in, when it is the only one and all are square.
std::optional<std::size_t> innerCorner(const Ring& ring) {
  std::optional<std::size_t> inner;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const double turn = turnAt(ring, i);
    if (turn == 0.0 || (turn < 0.0 && inner)) return std::nullopt;
    if (turn < 0.0) inner = i;
  }
  return inner;
}

Leg legOn(Ring ground) {
  const Point along = unit(ground[1] - ground[0]);
  const double length = distance(ground[0], ground[1]);
  const double width = distance(ground[1], ground[2]);
  return {std::move(ground), along, length, width};
}

}  // namespace

std::optional<Legs> legsOf(const Polygon& polygon) {
  if (!polygon.holes.empty() || polygon.outer.size() < 6) return std::nullopt;
  const Ring ring = withoutStraightCorners(normalised(polygon).outer);
  if (ring.size() != 6) return std::nullopt;
  const auto inner = innerCorner(ring);
  if (!inner) return std::nullopt;
  const auto at = [&](std::size_t i) { return ring[(*inner + i) % 6]; };
  // From the inner corner round: end of one leg at 1 and 2, outer corner 3, end of the other 4, 5.
  const Leg one = legOn({meeting(at(1), at(0), at(3), at(4)), at(1), at(2), at(3)});
  const Leg other = legOn({at(3), at(4), at(5), meeting(at(5), at(0), at(2), at(3))});
  if (one.length < one.width || other.length < other.width) return std::nullopt;
  return one.width >= other.width ? Legs{one, other} : Legs{other, one};
}

}  // namespace tussock
