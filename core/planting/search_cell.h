// SPDX-License-Identifier: MIT
// The cell of a grid in which neighbours are looked for.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/geometry/point.h"

namespace tussock {

// As wide as the widest distance asked about, in metres, or more where the grid would have over a
// million cells.
[[nodiscard]] inline double searchCell(const Box& box, double widest) {
  constexpr double kMostCells = 1e6;
  return std::max(widest, std::sqrt(box.width() * box.height() / kMostCells));
}

}  // namespace tussock
