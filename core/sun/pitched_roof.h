// SPDX-License-Identifier: MIT
// Gable and hip roofs as heights over the ground: what casts shade and what a plan shows of it.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

#include "core/model/solids.h"

namespace tussock {

// The rectangle a pitched roof stands on: u along the ridge, v across it, from the centre.
struct RoofFrame {
  Point centre, along;
  double halfLength = 0.0, halfWidth = 0.0;

  [[nodiscard]] Point across() const { return {-along.y, along.x}; }
  [[nodiscard]] Point at(double u, double v) const { return centre + along * u + across() * v; }
};

using RoofLine = std::array<Point, 2>;

// Height is a concave function over the rectangle, so what lies under it over a convex piece of the
// footprint is convex.
class PitchedRoof {
 public:
  PitchedRoof(const RoofFrame& frame, Roof kind, double eave, double rise)
      : frame_(frame), hip_(kind == Roof::Hip), eave_(eave), rise_(rise) {}

  [[nodiscard]] double heightAt(Point p) const;
  // Lines along which the roof changes its slope: the ridge and the hips.
  [[nodiscard]] std::vector<RoofLine> creases() const;

 private:
  // Hip ends slope as steeply as the sides where the house is long enough.
  [[nodiscard]] double hipRun() const { return std::min(frame_.halfLength, frame_.halfWidth); }

  RoofFrame frame_;
  bool hip_;
  double eave_, rise_;
};

// Metres above the ground; the ridge is at the eave when the roof is flat.
struct RoofHeights {
  double base = 0.0, eave = 0.0, ridge = 0.0;
};
// Nothing when they leave no body.
[[nodiscard]] std::optional<RoofHeights> roofHeightsOf(const Building& building);

// One roof and the convex pieces of ground that it is cut to. A house in the shape of an L has two,
// of which the higher is seen.
struct RoofPart {
  PitchedRoof roof;
  std::vector<Ring> pieces;
};
// The pitched roof over an outline; empty when the ridge is no higher than the eave.
[[nodiscard]] std::vector<RoofPart> roofPartsOver(const Polygon& plan, const Building& building,
                                                  const RoofHeights& heights);

}  // namespace tussock
