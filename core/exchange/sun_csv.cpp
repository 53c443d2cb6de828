// SPDX-License-Identifier: MIT
#include "core/exchange/sun_csv.h"

#include <array>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "core/exchange/csv.h"

namespace tussock {

namespace {

struct Column {
  const char* name;
  const char* description;
};
constexpr std::array<Column, 5> kColumns{
    {{"x_m", "Cell centre, metres east of the site's origin"},
     {"y_m", "Cell centre, metres north of the site's origin"},
     {"hours", "Hours of direct sun a day, the mean of the days told in the notes"},
     {"before_noon", "Those before solar noon"},
     {"after_noon", "Those after solar noon"}}};

}  // namespace

std::string sunMapToCsv(const SunMap& map) {
  std::string csv;
  std::vector<std::string> header;
  for (const Column& column : kColumns) header.emplace_back(column.name);
  csv += csvRecord(header);
  map.asked().each([&](int column, int row) {
    const Point p = map.centreOf(column, row);
    if (map.underBuilding(column, row) || !map.known(column, row) || !map.area().contains(p))
      return;
    const SunHours hours = map.at(column, row);
    // Numbers go in as they are: a spreadsheet takes -3.25 for a number, not a formula.
    csv += fmt::format("{:.3f},{:.3f},{:.3f},{:.3f},{:.3f}\r\n", p.x, p.y, hours.total(),
                       hours.beforeNoon, hours.afterNoon);
  });
  return csv;
}

std::string sunCsvMetadata(const std::string& table, const std::vector<SunNote>& notes) {
  using nlohmann::ordered_json;
  ordered_json document{{"@context", "http://www.w3.org/ns/csvw"}, {"url", table}};
  for (const SunNote& note : notes)
    document["notes"].push_back({{"name", note.name}, {"value", note.value}});
  for (const Column& column : kColumns)
    document["tableSchema"]["columns"].push_back(
        {{"name", column.name}, {"datatype", "decimal"}, {"dc:description", column.description}});
  // A name that is no UTF-8 is told as well as it can be.
  return document.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace tussock
