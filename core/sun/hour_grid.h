// SPDX-License-Identifier: MIT
// One figure for each cell of a sun map, ready to be drawn: hours a day, whole or of a month. Of
// ground too wide for that, for one cell out of several.
#pragma once

#include <optional>
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
  // Of the cell under a point; nothing beyond the grid and under buildings.
  [[nodiscard]] std::optional<double> hoursAt(Point p) const;
};
// Hours of the season or day that the map is of.
[[nodiscard]] HourGrid hourGridOf(const SunMap& map);
// Hours of one of its months; empty when the map does not tell of that month.
[[nodiscard]] HourGrid hourGridOf(const SunMap& map, std::chrono::month month);
// Of each cell the month with the fewest hours; empty when the map tells of no months.
[[nodiscard]] HourGrid worstHourGridOf(const SunMap& map);

}  // namespace tussock
