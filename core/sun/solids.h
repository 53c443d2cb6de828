// SPDX-License-Identifier: MIT
// The shade-casting bodies of a yard, convex pieces and crowns, on ground that is a plane. Heights
// are plumb and count from the ground right below.
#pragma once

#include <vector>

#include "core/model/yard.h"
#include "core/sun/horizon.h"

namespace tussock {

struct SitePoint {
  Point at;
  double up = 0.0;  // metres above the ground

  bool operator==(const SitePoint&) const = default;
};

// A convex body given by its corners; opaque but for its openness. Pieces of one building or wall
// share a group: light that crosses two of them is dimmed once.
struct ConvexSolid {
  std::vector<SitePoint> corners;
  double openness = 0.0;
  int group = 0;

  bool operator==(const ConvexSolid&) const = default;
};

// A tree's crown on its trunk, which is opaque and reaches from the ground to the crown's base.
// Either may be missing (radius 0). Openness depends on the day, see opennessOn.
struct Crown {
  Point at;
  CrownShape shape = CrownShape::Ellipsoid;
  double radius = 0.0, base = 0.0, top = 0.0;  // metres
  double trunkRadius = 0.0;
  double opennessLeaf = 0.0, opennessBare = 0.0;
  MonthDay leafOn{}, leafOff{};
  bool evergreen = false;
  // Of the part above the ground, where a slope buries some of the crown; else empty.
  std::vector<SitePoint> corners;

  bool operator==(const Crown&) const = default;
};
// In leaf from leafOn up to the day before leafOff, over the new year where leafOn is the later;
// all year when the two are one day.
[[nodiscard]] bool inLeaf(const Crown& crown, MonthDay day);
[[nodiscard]] double opennessOn(const Crown& crown, MonthDay day);

struct Solids {
  std::vector<ConvexSolid> bodies;
  std::vector<Crown> crowns;
  Horizon horizon{};
};
// Bodies in order of their group. Heights and sizes that are zero, negative or not finite cast
// nothing; openness is held between 0 and 1. A gable or hip roof stands on the smallest rectangle
// around the footprint (or the one along the ridge azimuth) and is cut to the footprint; a house in
// the shape of an L has one on each leg. Walls, fences and hedges follow the ground; buildings are
// level; trees are plumb.
[[nodiscard]] Solids solidsOf(const Yard& yard);

}  // namespace tussock
