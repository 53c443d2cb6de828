// SPDX-License-Identifier: MIT
#include "core/sun/month_map.h"

#include <algorithm>

namespace tussock {

namespace {

// The same ground with other hours.
template <class Hours>
SunMap copyWith(const SunMap& map, Hours hoursAt) {
  SunMap copy(map.area(), map.cell(), map.columns(), map.asked());
  map.asked().each([&](int column, int row) {
    copy.set(column, row, hoursAt(column, row));
    if (map.underBuilding(column, row)) copy.setUnderBuilding(column, row);
  });
  return copy;
}

}  // namespace

SunMap monthMapOf(const SunMap& map, std::chrono::month month) {
  const auto at = std::ranges::find(map.months(), month);
  if (at == map.months().end()) return {};
  const auto place = static_cast<std::size_t>(at - map.months().begin());
  return copyWith(map, [&](int column, int row) { return map.monthAt(place, column, row); });
}

SunMap worstMonthMapOf(const SunMap& map) {
  if (map.months().empty()) return {};
  return copyWith(map, [&](int column, int row) {
    SunHours least = map.monthAt(0, column, row);
    for (std::size_t month = 1; month < map.months().size(); ++month)
      if (const SunHours hours = map.monthAt(month, column, row); hours.total() < least.total())
        least = hours;
    return least;
  });
}

}  // namespace tussock
