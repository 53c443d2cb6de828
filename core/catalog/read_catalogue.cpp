// SPDX-License-Identifier: MIT
#include <set>

#include <fmt/format.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/plant_table.h"
#include "core/catalog/resources.h"

namespace tussock {

std::string CatalogueError::text() const {
  std::string where = line == 0 ? file : fmt::format("{}, line {}", file, line);
  if (!column.empty()) where += ", " + column;
  if (value.empty()) return fmt::format("{}: {} is missing.", where, expected);
  return fmt::format("{}: '{}' is not {}.", where, value, expected);
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
                              species->botanicalName, "a name that no earlier row has"});
  }
  sortByLine(table.errors);
  return {Catalogue(std::move(all)), std::move(table.errors)};
}

CatalogueReading readShippedCatalogue() {
  const auto path = resourceFolder() / "plants.csv";
  return readCatalogue(readFile(path), path.filename().string());
}

}  // namespace tussock
