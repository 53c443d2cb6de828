// SPDX-License-Identifier: MIT
#include "core/exchange/plant_csv.h"

#include <algorithm>
#include <set>

#include "core/catalog/plant_table.h"
#include "core/catalog/search.h"
#include "core/exchange/csv.h"

namespace tussock {

namespace {

constexpr std::string_view kName = "botanical_name";
constexpr std::string_view kSources = "sources";

class OwnPlantsReader {
 public:
  OwnPlantsReader(std::string_view fileName, const Catalogue& published)
      : fileName_(fileName), published_(published) {}

  OwnPlantsReading read(std::string_view csv) {
    PlantTable table = readPlantTable(csv, fileName_, ColumnsAsked::NameOnly);
    result_.errors = std::move(table.errors);
    dropUnknownColumns(table);
    for (const TableRow& row : table.rows) readRow(row.line, cellsOf(row, table.places));
    sortByLine(result_.errors);
    std::sort(
        result_.plants.begin(), result_.plants.end(),
        [](const OwnSpecies& a, const OwnSpecies& b) { return a.botanicalName < b.botanicalName; });
    return std::move(result_);
  }

 private:
  void fail(std::size_t line, std::string_view column, std::string value, std::string expected) {
    result_.errors.push_back(
        {std::string(fileName_), line, std::string(column), std::move(value), std::move(expected)});
  }

  void dropUnknownColumns(PlantTable& table) {
    std::erase_if(table.places, [&](const auto& place) {
      const bool unknown = !isPlantColumn(place.first);
      if (unknown) fail(1, "", place.first, "a column of the plant table, and is left out");
      return unknown;
    });
  }

  void readRow(std::size_t line, const PlantCells& cells) {
    const auto at = cells.find(kName);
    if (at == cells.end()) return fail(line, kName, "", "some text");
    const Species* published = publishedAs(at->second);
    const std::string name = published != nullptr ? published->botanicalName : at->second;
    if (names_.contains(name))
      return fail(line, kName, at->second, "a name of its own, for an earlier row has it");
    OwnSpecies own = differing(name, cells, published);
    if (!own.facts.empty() && !isWhole(line, own, published)) return;
    names_.insert(name);  // a row that cannot be used does not stand in the way of another
    if (!own.facts.empty()) result_.plants.push_back(std::move(own));
  }

  // By its botanical name or a synonym, in whatever case; not by a common name.
  [[nodiscard]] const Species* publishedAs(const std::string& name) const {
    const auto found = published_.named(name);
    if (found.size() != 1) return nullptr;
    const auto words = searchWords(name);
    const auto is = [&](const std::string& one) { return searchWords(one) == words; };
    const Species& species = *found.front();
    const auto& others = species.synonyms;
    const bool botanical =
        is(species.botanicalName) || std::any_of(others.begin(), others.end(), is);
    return botanical ? &species : nullptr;
  }

  static OwnSpecies differing(const std::string& name, const PlantCells& cells,
                              const Species* published) {
    const PlantCells there = published ? cellsOf(*published) : PlantCells{};
    OwnSpecies own{{}, name, {}};
    for (const auto& [column, value] : cells) {
      const auto same = there.find(column);
      if (column != kName && column != kSources && (same == there.end() || same->second != value))
        own.facts.push_back({column, value});
    }
    return own;
  }

  bool isWhole(std::size_t line, const OwnSpecies& own, const Species* published) {
    PlantCells cells = published ? cellsOf(*published) : PlantCells{};
    for (const OwnFact& fact : own.facts) cells.insert_or_assign(fact.column, fact.value);
    cells.insert_or_assign(std::string(kName), own.botanicalName);
    cells.try_emplace("genus", genusOf(own.botanicalName));
    const std::size_t before = result_.errors.size();
    const bool whole = speciesFromCells(cells, fileName_, result_.errors).has_value();
    for (std::size_t i = before; i < result_.errors.size(); ++i) result_.errors[i].line = line;
    return whole;
  }

  std::string_view fileName_;
  const Catalogue& published_;
  std::set<std::string> names_;
  OwnPlantsReading result_;
};

std::string tableOf(const std::vector<std::string>& columns,
                    const std::vector<PlantCells>& plants) {
  std::string csv = csvRecord(columns);
  for (const PlantCells& cells : plants) {
    std::vector<std::string> record;
    for (const std::string& column : columns) {
      const auto at = cells.find(column);
      record.push_back(at == cells.end() ? "" : at->second);
    }
    csv += csvRecord(record);
  }
  return csv;
}

}  // namespace

OwnPlantsReading readOwnPlants(std::string_view csv, std::string_view fileName,
                               const Catalogue& published) {
  return OwnPlantsReader(fileName, published).read(csv);
}

std::string ownPlantsCsv(const std::vector<OwnSpecies>& plants) {
  std::vector<PlantCells> rows;
  std::set<std::string, std::less<>> filled{std::string(kName)};
  for (const OwnSpecies& own : plants) {
    PlantCells cells{{std::string(kName), own.botanicalName}};
    for (const OwnFact& fact : own.facts) cells.insert_or_assign(fact.column, fact.value);
    for (const auto& [column, value] : cells) filled.insert(column);
    rows.push_back(std::move(cells));
  }
  std::vector<std::string> columns;
  for (const std::string_view column : kPlantColumns)
    if (filled.contains(column)) columns.emplace_back(column);
  return tableOf(columns, rows);
}

std::string plantsCsv(const Catalogue& catalogue) {
  std::vector<PlantCells> rows;
  for (const Species& species : catalogue.species()) rows.push_back(cellsOf(species));
  return tableOf({kPlantColumns.begin(), kPlantColumns.end()}, rows);
}

}  // namespace tussock
