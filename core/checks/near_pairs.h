// SPDX-License-Identifier: MIT
// Pairs of plants that stand near each other.
#pragma once

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "core/geometry/point.h"

namespace tussock {

// Calls f(a, b) once for every pair whose x and y each differ by at most `reach` metres. Sweeps
// along the longer side of the spots' box, so it is quick where few share a strip `reach` wide.
// A spot has a member `at`. Reorders the spots.
template <class Spot, class F>
void forEachNearPair(std::vector<Spot>& spots, double reach, F&& f) {
  Box box;
  for (const Spot& spot : spots) box.include(spot.at);
  const bool tall = box.height() > box.width();
  auto along = [tall](const Spot& s) { return tall ? s.at.y : s.at.x; };
  auto across = [tall](const Spot& s) { return tall ? s.at.x : s.at.y; };
  std::sort(spots.begin(), spots.end(),
            [&](const Spot& a, const Spot& b) { return along(a) < along(b); });
  for (auto a = spots.begin(); a != spots.end(); ++a)
    for (auto b = a + 1; b != spots.end() && along(*b) - along(*a) <= reach; ++b)
      if (std::abs(across(*a) - across(*b)) <= reach) f(std::as_const(*a), std::as_const(*b));
}

}  // namespace tussock
