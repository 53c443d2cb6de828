// SPDX-License-Identifier: MIT
// The slow and obvious way to tell sun from shade: a ray from the ground towards the sun, tried
// against every body. Shares no code with the sun engine, so that the two can be set side by side.
#pragma once

#include <random>
#include <vector>

#include "core/model/yard.h"
#include "core/sun/position.h"

namespace tussock::test {

// Under a roof on a rectangle, in the plainest terms. Heights are over the ground at `middle`, with
// the top level; or over the ground right below, as a fence's are.
struct RayBox {
  Point centre;
  double halfLength = 1.0, halfWidth = 1.0, turn = 0.0;  // metres; radians anticlockwise from east
  double bottom = 0.0, eave = 3.0, ridge = 3.0;          // ridge along the length
  bool hip = false, followsGround = false;
  double openness = 0.0;
  Point middle;
};
// On a rectangle, or in the shape of an L: a leg of length by width from its outer corner, and
// across the start of it another.
struct RayHouse {
  Point at;  // the rectangle's or the wide leg's corner
  double turn = 0.0, length = 6.0, width = 4.0;
  double otherLength = 0.0, otherWidth = 0.0;  // 0: no other leg
  Roof roof = Roof::Flat;
  double base = 0.0, eave = 3.0, ridge = 3.0, overhang = 0.0;
};
// A wall along a line that may bend; where it does, the outer corner is filled.
struct RayFence {
  std::vector<Point> line;
  double halfWidth = 0.1, height = 1.8, openness = 0.0;
};
// Upright on an outline that is seen whole from its middle, maybe around a court that is too:
// corners by their distance from the middle and the angle.
struct RayBlock {
  struct Corner {
    double far = 1.0, angle = 0.0;  // metres; radians, rising
  };
  Point middle;
  std::vector<Corner> outline, court;
  double height = 3.0;
  bool hedge = false;  // its top follows the ground; a building's is level
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
  std::vector<RayHouse> houses;
  std::vector<RayFence> fences;
  std::vector<RayBlock> blocks;
  std::vector<RayTree> trees;
  double slope = 0.0, aspect = 0.0;  // degrees
  std::vector<SkylinePoint> skyline;

  [[nodiscard]] Point rise() const;  // of the ground, metres for each metre east and north
};

[[nodiscard]] RayScene randomScene(std::mt19937_64& random);
[[nodiscard]] Yard yardOf(const RayScene& scene);
// The bodies a house is made of: each leg under its roof, or walls with roofs on top.
[[nodiscard]] std::vector<RayBox> boxesOf(const RayHouse& house);
// A fence's stretches, which dim the sun once where they overlap.
[[nodiscard]] std::vector<RayBox> boxesOf(const RayFence& fence);
[[nodiscard]] Polygon groundOf(const RayBlock& block);
// Share of the sun at p with every body grown (or, below zero, shrunk) by `growth` of its size;
// nothing is asked of the skyline or of the slope's own shade.
[[nodiscard]] double rayShare(const RayScene& scene, Point p, const SunPosition& sun, int dayOfYear,
                              double growth);
// Whether the sun stands above 0 degrees, the skyline and the slope.
[[nodiscard]] bool isUp(const RayScene& scene, const SunPosition& sun);

}  // namespace tussock::test
