// SPDX-License-Identifier: MIT
#include "core/sun/hour_grid.h"

#include <limits>

namespace tussock {

HourGrid hourGridOf(const SunMap& map) {
  HourGrid grid;
  if (map.empty()) return grid;
  grid.cell = map.cell().metres();
  grid.columns = map.columns();
  grid.rows = map.rows();
  // The cells may end a little beyond the area asked for.
  grid.area = {map.area().low,
               map.area().low + Point{grid.columns * grid.cell, grid.rows * grid.cell}};
  grid.hours.reserve(static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows));
  for (int row = 0; row < grid.rows; ++row)
    for (int column = 0; column < grid.columns; ++column)
      grid.hours.push_back(map.underBuilding(column, row)
                               ? std::numeric_limits<float>::quiet_NaN()
                               : static_cast<float>(map.at(column, row).total()));
  return grid;
}

}  // namespace tussock
