// SPDX-License-Identifier: MIT
// Pairs of plants that stand near each other.
#pragma once

#include <cmath>
#include <vector>

#include "core/geometry/point_grid.h"

namespace tussock {

// Calls f(a, b) once for every pair whose x and y each differ by at most `reach` metres. A spot has
// a member `at`.
template <class Spot, class F>
void forEachNearPair(const std::vector<Spot>& spots, double reach, F&& f) {
  std::vector<Point> given;
  given.reserve(spots.size());
  for (const Spot& spot : spots) given.push_back(spot.at);
  const PointGrid grid(given, reach);
  std::vector<Point> points;
  points.reserve(spots.size());
  for (const std::size_t i : grid.order()) points.push_back(given[i]);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point at = points[i];
    grid.forEachAround(Box{at, at}.grown(reach), [&](std::size_t j) {
      if (j > i && std::abs(points[j].x - at.x) <= reach && std::abs(points[j].y - at.y) <= reach)
        f(spots[grid.order()[i]], spots[grid.order()[j]]);
    });
  }
}

}  // namespace tussock
