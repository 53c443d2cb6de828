// SPDX-License-Identifier: MIT
// Points sorted into square cells, built once and then only asked: what is near costs the same
// however many there are, as long as they lie about evenly, as plants do.
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/point.h"

namespace tussock {

class PointGrid {
 public:
  PointGrid() = default;  // of no points
  // `cell` metres, about half of what boxes asked of are wide; larger where points lie so thinly
  // that there would be many times as many cells as points.
  PointGrid(const std::vector<Point>& points, double cell);

  // The positions in the vector given, cell by cell. Who keeps things in this order finds those
  // that lie near each other side by side.
  [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }
  // Calls f(place in the order) for all points in the box, and for some beside it.
  template <class F>
  void forEachAround(const Box& box, F&& f) const {
    if (order_.empty() || !box_.overlaps(box)) return;
    const std::size_t left = columnOf(box.low.x), right = columnOf(box.high.x);
    const std::size_t high = rowOf(box.high.y);
    for (std::size_t row = rowOf(box.low.y); row <= high; ++row) {
      const std::size_t end = first_[row * columns_ + right + 1];
      for (std::size_t i = first_[row * columns_ + left]; i < end; ++i) f(i);
    }
  }

 private:
  [[nodiscard]] std::size_t columnOf(double x) const { return stepOf(x - box_.low.x, columns_); }
  [[nodiscard]] std::size_t rowOf(double y) const { return stepOf(y - box_.low.y, rows_); }
  [[nodiscard]] std::size_t stepOf(double away, std::size_t count) const;
  [[nodiscard]] std::size_t cellOf(Point p) const { return rowOf(p.y) * columns_ + columnOf(p.x); }

  Box box_;
  double cell_ = 1.0;
  std::size_t columns_ = 1, rows_ = 1;
  std::vector<std::size_t> first_;  // of each cell in the order, then the count of all
  std::vector<std::size_t> order_;
};

}  // namespace tussock
