// SPDX-License-Identifier: MIT
#include "core/geometry/point_grid.h"

#include <algorithm>
#include <cmath>

namespace tussock {

PointGrid::PointGrid(const std::vector<Point>& points, double cell) {
  if (points.empty()) return;
  for (const Point p : points) box_.include(p);
  const double count = static_cast<double>(points.size());
  const double width = box_.width(), height = box_.height();
  // So there are at most three times as many cells as points, and one.
  cell_ = std::max({cell, std::sqrt(width * height / count), std::max(width, height) / count});
  columns_ = 1 + static_cast<std::size_t>(width / cell_);
  rows_ = 1 + static_cast<std::size_t>(height / cell_);
  first_.assign(columns_ * rows_ + 1, 0);
  for (const Point p : points) ++first_[cellOf(p) + 1];
  for (std::size_t i = 1; i < first_.size(); ++i) first_[i] += first_[i - 1];
  order_.resize(points.size());
  std::vector<std::size_t> next(first_.begin(), first_.end() - 1);
  for (std::size_t i = 0; i < points.size(); ++i) order_[next[cellOf(points[i])]++] = i;
}

std::size_t PointGrid::stepOf(double away, std::size_t count) const {
  const double step = std::clamp(away / cell_, 0.0, static_cast<double>(count - 1));
  return static_cast<std::size_t>(step);
}

}  // namespace tussock
