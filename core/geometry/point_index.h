// SPDX-License-Identifier: MIT
// A spatial index over points (an R-tree behind it), built once and then only asked.
#pragma once

#include <cstddef>
#include <memory>
#include <vector>

#include "core/geometry/point.h"

namespace tussock {

class PointIndex {
 public:
  explicit PointIndex(const std::vector<Point>& points);
  ~PointIndex();
  PointIndex(PointIndex&&) noexcept;
  PointIndex& operator=(PointIndex&&) noexcept;

  // Positions in the vector given to the constructor.
  [[nodiscard]] std::vector<std::size_t> within(Point centre, double metres) const;
  [[nodiscard]] std::vector<std::size_t> nearest(Point centre, std::size_t count) const;

 private:
  struct Tree;
  std::unique_ptr<Tree> tree_;
};

}  // namespace tussock
