// SPDX-License-Identifier: MIT
#include "core/planting/bed_arms.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/overlay.h"

namespace tussock {

namespace {

constexpr double kBent = 0.8;     // of its hull that a bed fills, from which on it is one piece
constexpr double kNodes = 250.0;  // about so many
constexpr double kReach = 1.3;    // widths of an arm: farther round the corner the other one counts
// The circle in the corner of an L, between the outer sides and the inner corner: its radius is
// width times 2 - sqrt 2, and no other in the bed is larger.
constexpr double kCorner = 2.0 - 1.41421356;

double share(const Polygon& outline) {
  const double hull = areaOf(Polygon{convexHull(outline.outer), {}}).squareMetres();
  return hull > 0.0 ? areaOf(Polygon{outline.outer, {}}).squareMetres() / hull : 1.0;
}

}  // namespace

BedArms::BedArms(const Polygon& outline) {
  if (outline.empty() || share(outline) >= kBent) return;
  box_ = boundsOf(outline);
  step_ = std::sqrt(areaOf(outline).squareMetres() / kNodes);
  columns_ = 1 + static_cast<int>(box_.width() / step_);
  rows_ = 1 + static_cast<int>(box_.height() / step_);
  double widest = 0.0;
  for (int row = 0; row < rows_; ++row)
    for (int column = 0; column < columns_; ++column) {
      const Point p = box_.low + Point{(column + 0.5) * step_, (row + 0.5) * step_};
      const bool inside = contains(outline, p);
      grid_.push_back(inside ? static_cast<int>(nodes_.size()) : -1);
      if (!inside) continue;
      nodes_.push_back({p, {}});
      widest = std::max(widest, distanceToEdge(outline, p));
    }
  width_ = widest / kCorner;
  reach_ = kReach * width_;
  for (Node& node : nodes_) lookAround(node);
}

void BedArms::lookAround(Node& node) const {
  double count = 0.0, xx = 0.0, yy = 0.0, xy = 0.0;
  Point sum;
  for (const Node& other : nodes_) {
    const Point away = other.at - node.at;
    if (dot(away, away) > reach_ * reach_) continue;
    count += 1.0, sum += away;
    xx += away.x * away.x, yy += away.y * away.y, xy += away.x * away.y;
  }
  xx -= sum.x * sum.x / count, yy -= sum.y * sum.y / count, xy -= sum.x * sum.y / count;
  const double all = std::max(1e-9, xx + yy);
  node.twice = {(xx - yy) / all, 2.0 * xy / all};
}

int BedArms::nodeAt(int column, int row) const {
  if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return -1;
  return grid_[static_cast<std::size_t>(row * columns_ + column)];
}

// The mean of the nodes around, nearer ones counting more.
Angle BedArms::at(Point p) const {
  const int column = static_cast<int>(std::floor((p.x - box_.low.x) / step_));
  const int row = static_cast<int>(std::floor((p.y - box_.low.y) / step_));
  Point twice;
  for (int reach = 1; reach <= 3 && dot(twice, twice) <= 0.0; ++reach)
    for (int j = row - reach; j <= row + reach; ++j)
      for (int i = column - reach; i <= column + reach; ++i) {
        const int node = nodeAt(i, j);
        if (node < 0) continue;
        const Node& near = nodes_[static_cast<std::size_t>(node)];
        const Point away = near.at - p;
        twice += near.twice * (1.0 / (dot(away, away) + 0.25 * step_ * step_));
      }
  return Angle::radians(0.5 * std::atan2(twice.y, twice.x));
}

}  // namespace tussock
