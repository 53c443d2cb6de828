// SPDX-License-Identifier: MIT
#include "core/sun/hour_grid.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tussock {

namespace {

constexpr double kMostDrawn = 1.6e6;  // cells; of more, one out of several is drawn

int strideOf(const SunMap& map) {
  const double cells = static_cast<double>(map.columns()) * static_cast<double>(map.rows());
  return std::max(1, static_cast<int>(std::ceil(std::sqrt(cells / kMostDrawn))));
}

template <class Hours>
HourGrid gridOf(const SunMap& map, Hours hoursAt) {
  HourGrid grid;
  if (map.empty()) return grid;
  const int stride = strideOf(map);
  grid.cell = map.cell().metres() * stride;
  grid.columns = (map.columns() + stride - 1) / stride;
  grid.rows = (map.rows() + stride - 1) / stride;
  // The cells may end a little beyond the area asked for.
  grid.area = {map.area().low,
               map.area().low + Point{grid.columns * grid.cell, grid.rows * grid.cell}};
  grid.hours.reserve(static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows));
  const auto drawn = [stride](int place, int end) {
    return std::min(place * stride + stride / 2, end - 1);
  };
  for (int y = 0; y < grid.rows; ++y)
    for (int x = 0; x < grid.columns; ++x) {
      const int row = drawn(y, map.rows()), column = drawn(x, map.columns());
      const bool told = !map.underBuilding(column, row) && map.known(column, row);
      grid.hours.push_back(told ? static_cast<float>(hoursAt(column, row))
                                : std::numeric_limits<float>::quiet_NaN());
    }
  return grid;
}

}  // namespace

std::optional<double> HourGrid::hoursAt(Point p) const {
  if (empty()) return std::nullopt;
  const Point place = (p - area.low) * (1.0 / cell);
  if (!(place.x >= 0.0 && place.y >= 0.0 && place.x < columns && place.y < rows))
    return std::nullopt;
  const double found = at(static_cast<int>(place.x), static_cast<int>(place.y));
  if (std::isnan(found)) return std::nullopt;
  return found;
}

HourGrid hourGridOf(const SunMap& map) {
  return gridOf(map, [&](int column, int row) { return map.at(column, row).total(); });
}

HourGrid hourGridOf(const SunMap& map, std::chrono::month month) {
  const auto& months = map.months();
  const auto at = std::find(months.begin(), months.end(), month);
  if (at == months.end()) return {};
  const auto place = static_cast<std::size_t>(at - months.begin());
  return gridOf(map, [&](int column, int row) { return map.monthAt(place, column, row).total(); });
}

HourGrid worstHourGridOf(const SunMap& map) {
  const std::size_t count = map.months().size();
  if (count == 0) return {};
  return gridOf(map, [&](int column, int row) {
    double least = map.monthAt(0, column, row).total();
    for (std::size_t month = 1; month < count; ++month)
      least = std::min(least, map.monthAt(month, column, row).total());
    return least;
  });
}

}  // namespace tussock
