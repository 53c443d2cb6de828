// SPDX-License-Identifier: MIT
// Points of a site that tapes can be held at, and what a tape cannot be pulled through.
#pragma once

#include <string>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

// A point that stands on the site already and can be found without a plan.
struct FixedPoint {
  std::string name;  // "Library, north-west corner"
  Point at;
};
// Corners of buildings, ends of walls and fences, water points. Of several that would be called the
// same none is given: a crew must not have to guess which is meant.
[[nodiscard]] std::vector<FixedPoint> fixedPoints(const Yard& yard);

// Buildings, walls, fences, hedges and trunks, a hair smaller than they stand: a tape may run along
// a face.
class TapeObstacles {
 public:
  explicit TapeObstacles(const Yard& yard);
  // Whether a tape runs straight from `from` to `to`. Its first metres may lie in what it is held
  // at: the end of a wall is the middle of its thickness.
  [[nodiscard]] bool free(const FixedPoint& from, Point to) const;

 private:
  struct Obstacle {
    Polygon ground;
    Box box;
  };
  std::vector<Obstacle> obstacles_;
};

}  // namespace tussock
