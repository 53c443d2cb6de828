// SPDX-License-Identifier: MIT
// Round things on a grid of square cells: add one, ask which are near. Unlike PointIndex it takes
// points one by one, as a growing drift needs.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/geometry/point.h"

namespace tussock {

class DiscGrid {
 public:
  DiscGrid(const Box& box, double cell) : box_(box.grown(cell)), cell_(cell) {
    columns_ = 1 + static_cast<int>(box_.width() / cell);
    rows_ = 1 + static_cast<int>(box_.height() / cell);
    first_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), kNone);
  }

  // Items are numbered from 0 in the order they are added.
  void add(Point p) {
    int& first = first_[cellOf(columnOf(p.x), rowOf(p.y))];
    next_.push_back(first);
    at_.push_back(p);
    first = static_cast<int>(at_.size()) - 1;
  }
  void move(std::size_t item, Point p) {
    int* link = &first_[cellOf(columnOf(at_[item].x), rowOf(at_[item].y))];
    while (*link != static_cast<int>(item)) link = &next_[static_cast<std::size_t>(*link)];
    *link = next_[item];
    int& first = first_[cellOf(columnOf(p.x), rowOf(p.y))];
    next_[item] = first;
    at_[item] = p;
    first = static_cast<int>(item);
  }
  [[nodiscard]] Point at(std::size_t item) const { return at_[item]; }
  [[nodiscard]] std::size_t size() const { return at_.size(); }

  // Calls f(item) for the items nearer than `metres`; stops and returns false when f does.
  template <class F>
  bool near(Point p, double metres, F&& f) const {
    const int left = columnOf(p.x - metres), right = columnOf(p.x + metres);
    const int low = rowOf(p.y - metres), high = rowOf(p.y + metres);
    for (int row = low; row <= high; ++row)
      for (int column = left; column <= right; ++column)
        for (int i = first_[cellOf(column, row)]; i != kNone;
             i = next_[static_cast<std::size_t>(i)]) {
          const auto item = static_cast<std::size_t>(i);
          if (squaredDistance(p, at_[item]) < metres * metres && !f(item)) return false;
        }
    return true;
  }
  // The item nearest to p, looked for within `metres` first, then in wider and wider rounds. There
  // must be one.
  [[nodiscard]] std::size_t nearest(Point p, double metres) const {
    std::size_t found = at_.size();
    for (double reach = metres; found == at_.size(); reach *= 2.0) {
      double best = reach * reach;
      near(p, reach, [&](std::size_t item) {
        const double d = squaredDistance(p, at_[item]);
        if (d < best) best = d, found = item;
        return true;
      });
    }
    return found;
  }

 private:
  static constexpr int kNone = -1;
  [[nodiscard]] int columnOf(double x) const {
    return std::clamp(static_cast<int>((x - box_.low.x) / cell_), 0, columns_ - 1);
  }
  [[nodiscard]] int rowOf(double y) const {
    return std::clamp(static_cast<int>((y - box_.low.y) / cell_), 0, rows_ - 1);
  }
  [[nodiscard]] std::size_t cellOf(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
           static_cast<std::size_t>(column);
  }

  Box box_;
  double cell_;
  int columns_ = 0, rows_ = 0;
  std::vector<int> first_, next_;
  std::vector<Point> at_;
};

}  // namespace tussock
