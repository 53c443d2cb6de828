// SPDX-License-Identifier: MIT
#include <set>

#include <fmt/format.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/plant_table.h"
#include "core/catalog/resources.h"

namespace tussock {

// Of a long value its start tells which it is; never cut within a letter of UTF-8.
static std::string shortened(const std::string& value) {
  constexpr std::size_t kMost = 60;
  if (value.size() <= kMost) return value;
  std::size_t end = kMost;
  while (end > 0 && (static_cast<unsigned char>(value[end]) & 0xC0U) == 0x80U) --end;
  return value.substr(0, end) + "…";
}

std::string CatalogueError::text() const {
  std::string where = line == 0 ? file : fmt::format("{}, line {}", file, line);
  if (!column.empty()) where += ", " + column;
  if (!told.empty()) return fmt::format("{}: {}", where, told);
  if (value.empty()) return fmt::format("{}: {} is missing.", where, expected);
  return fmt::format("{}: '{}' is not {}.", where, shortened(value), expected);
}

CatalogueReading readCatalogue(std::string_view csv, std::string_view fileName) {
  PlantTable table = readPlantTable(csv, fileName, ColumnsAsked::All);
  std::vector<Species> all;
  std::set<std::string> names;
  for (const TableRow& row : table.rows) {
    auto species = speciesFromRow(row, table.places, fileName, table.errors);
    if (!species) continue;
    if (names.insert(species->botanicalName).second)
      all.push_back(std::move(*species));
    else
      table.errors.push_back({std::string(fileName), row.line, "botanical_name",
                              species->botanicalName,
                              "a name of its own, for an earlier row has it"});
  }
  sortByLine(table.errors);
  return {Catalogue(std::move(all)), std::move(table.errors)};
}

CatalogueReading readShippedCatalogue() {
  const auto path = resourceFolder() / "plants.csv";
  return readCatalogue(readFile(path), path.filename().string());
}

}  // namespace tussock
