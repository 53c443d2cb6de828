// SPDX-License-Identifier: MIT
#include "core/exchange/rewritten_table.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/catalog/formula_guard.h"
#include "core/catalog/search.h"
#include "core/catalog/species_row.h"
#include "core/catalog/table.h"
#include "core/exchange/csv.h"
#include "core/exchange/kept_rows.h"

namespace tussock {

namespace {

constexpr std::string_view kNameColumn = "botanical_name";

using OtherCells = std::map<std::size_t, std::string>;  // filled ones, by the place of the column
using NameWords = std::vector<std::string>;

class TableBefore {
 public:
  explicit TableBefore(std::string_view csv) {
    Table table = readTable(csv);
    if (table.rows.empty()) return;
    columns_ = std::move(table.rows.front().cells);
    for (std::size_t at = 0; at < columns_.size(); ++at)
      if (isPlantColumn(columns_[at])) places_.try_emplace(columns_[at], at);
    for (std::size_t row = 1; row < table.rows.size(); ++row) take(table.rows[row]);
  }

  [[nodiscard]] const std::vector<std::string>& columns() const { return columns_; }
  // Of the first column of that name in the plant table.
  [[nodiscard]] const std::map<std::string, std::size_t, std::less<>>& places() const {
    return places_;
  }
  struct Row {
    OtherCells cells;
    NameWords name;
  };
  // By their lines, those that have such cells.
  [[nodiscard]] const std::map<std::size_t, Row>& rows() const { return rows_; }

 private:
  void take(const TableRow& row) {
    if (row.cells.size() != columns_.size()) return;  // out of step: kept as it is
    Row taken;
    for (std::size_t at = 0; at < row.cells.size(); ++at)
      if (const auto known = places_.find(columns_[at]);
          known == places_.end() || known->second != at)
        if (!row.cells[at].empty()) taken.cells.emplace(at, unguarded(row.cells[at]));
    if (taken.cells.empty()) return;
    const auto name = places_.find(kNameColumn);
    if (name != places_.end()) taken.name = searchWords(unguarded(row.cells[name->second]));
    rows_.emplace(row.line, std::move(taken));
  }

  std::vector<std::string> columns_;
  std::map<std::string, std::size_t, std::less<>> places_;
  std::map<std::size_t, Row> rows_;
};

struct Staying {
  std::map<NameWords, OtherCells> ofPlants;
  std::set<std::size_t> rows;  // lines of those kept as they are
};

Staying stayingOf(const std::vector<OwnSpecies>& plants, const TableBefore& before,
                  const OwnPlantsReading& read) {
  Staying staying{{}, read.rowsLeft};
  std::map<std::size_t, NameWords> nameAt;  // of a plant that was read, by its published name
  for (std::size_t i = 0; i < read.plants.size(); ++i)
    if (before.rows().contains(read.lines[i]))
      nameAt.emplace(read.lines[i], searchWords(read.plants[i].botanicalName));
  std::set<NameWords> names;
  for (const OwnSpecies& own : plants) names.insert(searchWords(own.botanicalName));
  for (const auto& [line, row] : before.rows()) {
    if (read.rowsLeft.contains(line)) continue;
    const auto at = nameAt.find(line);
    const NameWords& name = at == nameAt.end() ? row.name : at->second;
    if (names.contains(name))
      staying.ofPlants[name].insert(row.cells.begin(), row.cells.end());
    else if (at == nameAt.end())
      staying.rows.insert(line);
  }
  return staying;
}

std::vector<std::string> recordOf(const OwnSpecies& own, const Staying& staying,
                                  const std::map<std::string, std::size_t, std::less<>>& places,
                                  std::size_t columns) {
  std::vector<std::string> record(columns);
  record[places.find(kNameColumn)->second] = own.botanicalName;
  for (const OwnFact& fact : own.facts)
    if (const auto at = places.find(fact.column); at != places.end())
      record[at->second] = fact.value;
  if (const auto cells = staying.ofPlants.find(searchWords(own.botanicalName));
      cells != staying.ofPlants.end())
    for (const auto& [at, cell] : cells->second) record[at] = cell;
  return record;
}

}  // namespace

std::string rewrittenTable(const std::vector<OwnSpecies>& plants, std::string_view before,
                           const OwnPlantsReading& read) {
  const TableBefore table(before);
  const Staying staying = stayingOf(plants, table, read);
  std::vector<std::string> columns = table.columns();
  auto places = table.places();
  for (std::string& column : filledColumns(plants))
    if (places.try_emplace(column, columns.size()).second) columns.push_back(std::move(column));
  std::string csv = csvRecord(columns);
  for (const OwnSpecies& own : plants)
    csv += csvRecord(recordOf(own, staying, places, columns.size()));
  return csv + KeptRows(before, staying.rows).text(columns.size());
}

bool losesOtherCells(const std::vector<OwnSpecies>& plants, std::string_view before,
                     const OwnPlantsReading& read) {
  std::set<std::string_view> names;
  for (const OwnSpecies& own : plants) names.insert(own.botanicalName);
  const TableBefore table(before);
  for (std::size_t i = 0; i < read.plants.size(); ++i)
    if (!names.contains(read.plants[i].botanicalName) && table.rows().contains(read.lines[i]))
      return true;
  return false;
}

}  // namespace tussock
