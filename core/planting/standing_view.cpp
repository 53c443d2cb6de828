// SPDX-License-Identifier: MIT
#include "core/planting/standing_view.h"

#include <algorithm>
#include <limits>

namespace tussock {

namespace {

// From left to right and from front to back for somebody who stands on the side `from`.
struct Axes {
  Point right, back;

  explicit Axes(Angle from) {
    const Point towards = directionOf(from);
    back = {-towards.x, -towards.y};
    right = {-towards.y, towards.x};
  }
};

struct Extent {
  double least = std::numeric_limits<double>::infinity();
  double most = -std::numeric_limits<double>::infinity();

  void include(double value) {
    least = std::min(least, value);
    most = std::max(most, value);
  }
};

}  // namespace

StandingView standingView(const Yard& yard, const Bed& bed, Angle from) {
  const Axes axes(from);
  Extent across, depth;
  for (const Point p : bed.outline.outer) {
    across.include(dot(p, axes.right));
    depth.include(dot(p, axes.back));
  }
  StandingView view{from, across.most - across.least, depth.most - depth.least, {}};
  for (const Drift* drift : driftsIn(yard, bed.id))
    for (const Plant& plant : drift->plants)
      view.plants.push_back({drift->id, plant.id, dot(plant.at, axes.right) - across.least,
                             dot(plant.at, axes.back) - depth.least});
  std::stable_sort(
      view.plants.begin(), view.plants.end(),
      [](const StandingPlant& a, const StandingPlant& b) { return a.depth > b.depth; });
  return view;
}

StandingView standingView(const Yard& yard, const Bed& bed) {
  const bool oneSide = !bed.viewing.allRound && !bed.viewing.from.empty();
  return standingView(yard, bed, oneSide ? bed.viewing.from.front() : Angle::degrees(180.0));
}

}  // namespace tussock
