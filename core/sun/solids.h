// SPDX-License-Identifier: MIT
// The shade-casting bodies of a yard: convex pieces standing on level ground, and crowns.
#pragma once

#include <variant>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

struct SitePoint {
  Point at;
  double up = 0.0;  // metres above the ground
};

// A convex body given by its corners; opaque but for its openness.
struct ConvexSolid {
  std::vector<SitePoint> corners;
  double openness = 0.0;
};

// A tree's crown on its trunk. Openness depends on the day, see opennessOn.
struct Crown {
  Point at;
  CrownShape shape = CrownShape::Ellipsoid;
  double radius = 0.0, base = 0.0, top = 0.0;  // metres
  double trunkRadius = 0.0;
  double opennessLeaf = 0.0, opennessBare = 0.0;
  MonthDay leafOn, leafOff;
  bool evergreen = false;
};
[[nodiscard]] double opennessOn(const Crown& crown, MonthDay day);

struct Solids {
  std::vector<ConvexSolid> bodies;
  std::vector<Crown> crowns;
};
[[nodiscard]] Solids solidsOf(const Yard& yard);

}  // namespace tussock
