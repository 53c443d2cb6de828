// SPDX-License-Identifier: MIT
#include "core/exchange/sun_csv.h"

#include <fmt/format.h>

#include "core/exchange/csv.h"

namespace tussock {

std::string sunMapToCsv(const SunMap& map, const std::vector<SunNote>& notes) {
  std::string csv;
  for (const SunNote& note : notes) csv += csvRecord({"# " + note.name, note.value});
  csv += csvRecord({"x_m", "y_m", "hours", "before_noon", "after_noon"});
  for (int row = 0; row < map.rows(); ++row)
    for (int column = 0; column < map.columns(); ++column) {
      if (map.underBuilding(column, row)) continue;
      const Point p = map.centreOf(column, row);
      const SunHours hours = map.at(column, row);
      // Numbers go in as they are: a spreadsheet takes -3.25 for a number, not a formula.
      csv += fmt::format("{:.3f},{:.3f},{:.3f},{:.3f},{:.3f}\r\n", p.x, p.y, hours.total(),
                         hours.beforeNoon, hours.afterNoon);
    }
  return csv;
}

}  // namespace tussock
