// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>
#include <vector>

#include "core/geometry/polygon.h"

namespace tussock::test {

// All points of a triangular lattice of the given spacing inside `box`, through `origin`, with rows
// turned `axis` anticlockwise from east.
[[nodiscard]] inline std::vector<Point> triangularLattice(const Box& box, Length spacing,
                                                          Point origin, Angle axis) {
  std::vector<Point> points;
  if (box.empty() || spacing <= Length()) return points;
  const double s = spacing.metres();
  const double row = s * std::numbers::sqrt3 / 2.0;
  // Turn the box into the lattice's frame and take what covers it.
  Box turned;
  for (const Point corner :
       {box.low, box.high, Point{box.low.x, box.high.y}, Point{box.high.x, box.low.y}})
    turned.include(rotated(corner, -axis, origin) - origin);
  for (int j = static_cast<int>(std::floor(turned.low.y / row)); j * row <= turned.high.y + row;
       ++j) {
    const double shift = j % 2 != 0 ? s / 2.0 : 0.0;
    for (int i = static_cast<int>(std::floor(turned.low.x / s)) - 1; i * s <= turned.high.x + s;
         ++i) {
      const Point local{i * s + shift, j * row};
      const Point p = rotated(origin + local, axis, origin);
      if (box.contains(p)) points.push_back(p);
    }
  }
  return points;
}

}  // namespace tussock::test
