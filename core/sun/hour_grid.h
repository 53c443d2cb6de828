// SPDX-License-Identifier: MIT
// One figure for each cell of a sun map, ready to be drawn: hours a day, whole or of a month.
#pragma once

#include <vector>

#include "core/sun/map.h"

namespace tussock {

struct HourGrid {
  Box area;           // of the cells, in site metres
  double cell = 0.0;  // metres
  int columns = 0, rows = 0;
  std::vector<float> hours;  // by row from the south, by column from the west; NaN under a building

  [[nodiscard]] bool empty() const { return hours.empty(); }
  [[nodiscard]] float at(int column, int row) const {
    return hours[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                 static_cast<std::size_t>(column)];
  }
  [[nodiscard]] Point centreOf(int column, int row) const {
    return area.low + Point{column + 0.5, row + 0.5} * cell;
  }
};
// Hours of the whole day.
[[nodiscard]] HourGrid hourGridOf(const SunMap& map);

}  // namespace tussock
