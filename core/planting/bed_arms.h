// SPDX-License-Identifier: MIT
// The arms of a bed that is bent, such as an L, and which way each runs: along the longer axis of
// the ground around a place (principal axis of its second moments).
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

class BedArms {
 public:
  explicit BedArms(const Polygon& outline);

  // A bed that fills most of its convex hull has none.
  [[nodiscard]] bool empty() const { return nodes_.empty(); }
  // Anticlockwise from east; its sense means nothing.
  [[nodiscard]] Angle at(Point p) const;
  [[nodiscard]] double width() const { return width_; }  // metres, of an arm

 private:
  struct Node {
    Point at;
    Point twice;  // twice the angle, as a direction that is the longer the clearer it is
  };
  void lookAround(Node& node) const;
  [[nodiscard]] int nodeAt(int column, int row) const;

  std::vector<Node> nodes_;
  std::vector<int> grid_;  // which node at each place, -1 outside
  Box box_;
  double step_ = 1.0, reach_ = 1.0, width_ = 0.0;
  int columns_ = 0, rows_ = 0;
};

}  // namespace tussock
