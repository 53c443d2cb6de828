// SPDX-License-Identifier: MIT
// The slow and obvious way to tell sun from shade: a ray from the ground towards the sun, tried
// against every body. Shares no code with the sun engine, so that the two can be set side by side.
#pragma once

#include <random>
#include <vector>

#include "core/model/yard.h"
#include "core/sun/position.h"

namespace tussock::test {

// A box-shaped house or straight fence, or a tree, in the plainest terms.
struct RayBox {
  Point centre;
  double halfLength = 1.0, halfWidth = 1.0, turn = 0.0;  // metres; radians anticlockwise from east
  double eave = 3.0, ridge = 3.0;                        // ridge along the length
  bool hip = false;
  double openness = 0.0;
};
struct RayTree {
  Point at;
  CrownShape shape = CrownShape::Ellipsoid;
  double radius = 2.0, base = 1.0, top = 6.0, trunkRadius = 0.1;
  double opennessLeaf = 0.2, opennessBare = 0.6;
  int leafOn = 110, leafOff = 300;  // days of the year
};
struct RayScene {
  std::vector<RayBox> houses, fences;
  std::vector<RayTree> trees;
};

[[nodiscard]] RayScene randomScene(std::mt19937_64& random);
[[nodiscard]] Yard yardOf(const RayScene& scene);
// Share of the sun at p with every body grown (or, below zero, shrunk) by `growth` of its size.
[[nodiscard]] double rayShare(const RayScene& scene, Point p, const SunPosition& sun, int dayOfYear,
                              double growth);

}  // namespace tussock::test
