// SPDX-License-Identifier: MIT
#include "core/exchange/plant_csv.h"

#include <algorithm>
#include <array>
#include <deque>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/edit_plants.h"
#include "core/catalog/entry_checks.h"
#include "core/catalog/plant_table.h"
#include "core/catalog/search.h"
#include "core/catalog/source_list.h"
#include "core/exchange/csv.h"
#include "core/exchange/kept_rows.h"
#include "core/exchange/plant_names.h"
#include "core/exchange/row_notes.h"

namespace tussock {

namespace {

constexpr std::string_view kName = "botanical_name";
constexpr std::string_view kSources = "sources";

// What is wrong with the plant where it stands over the published one, told of its row.
std::vector<CatalogueError> faultsAlone(const Catalogue& published, const OwnSpecies& own,
                                        std::string_view fileName, std::size_t line) {
  std::vector<CatalogueError> errors;
  (void)speciesOver(published.find(own.botanicalName), own, errors);
  for (CatalogueError& error : errors) error.file = fileName, error.line = line;
  return errors;
}

bool isAmong(const std::vector<CatalogueError>& errors, const CatalogueError& one) {
  return std::any_of(errors.begin(), errors.end(), [&](const CatalogueError& error) {
    return error.column == one.column && error.value == one.value && error.expected == one.expected;
  });
}

// The same of the personal plant that it would make of an old one, which alone need not be whole.
std::vector<CatalogueError> faultsWith(const Catalogue& published, const OwnSpecies& old,
                                       const OwnSpecies& own, std::string_view fileName,
                                       std::size_t line) {
  const auto alone = faultsAlone(published, own, fileName, line);
  auto errors = faultsAlone(published, withTaken({old}, {own}).front(), fileName, line);
  for (CatalogueError& error : errors)
    if (!isAmong(alone, error))
      error.expected += ", beside your own values of " + own.botanicalName;
  return errors;
}

// Columns that rows of new plants would need and the table does not have: told of the table, once
// each, not of its rows.
class ColumnsWanted {
 public:
  // Whether the fault is for want of a column; it is then kept here.
  bool take(const CatalogueError& fault, const ColumnPlaces& places) {
    if (!fault.value.empty() || places.contains(fault.column)) return false;
    const auto [at, isNew] = wanted_.try_emplace(fault.column, Rows{fault.line, 0});
    ++at->second.count;
    return true;
  }
  void tell(std::string_view fileName, std::size_t headerLine,
            std::vector<CatalogueError>& errors) const {
    for (const auto& [column, rows] : wanted_)
      errors.push_back(
          {std::string(fileName), headerLine, column, "",
           fmt::format("a column of this name, which a new plant needs ({} left out "
                       "for want of it, the first on line {}),",
                       rows.count == 1 ? "one row is" : fmt::format("{} rows are", rows.count),
                       rows.first)});
  }

 private:
  struct Rows {
    std::size_t first, count;
  };
  std::map<std::string, Rows, std::less<>> wanted_;
};

class OwnPlantsReader {
 public:
  OwnPlantsReader(std::string_view fileName, const Catalogue& published,
                  const std::vector<OwnSpecies>& personal)
      : fileName_(fileName), published_(published) {
    for (const OwnSpecies& own : personal) personal_.try_emplace(own.botanicalName, &own);
  }

  OwnPlantsReading read(std::string_view csv) {
    bool begun = false;
    const PlantTable table = readPlantTable(csv, fileName_, ColumnsAsked::NameOnly,
                                            [&](TableRow row, const PlantTable& head) {
                                              if (!begun) takeColumns(head);
                                              begun = true;
                                              readRow(std::move(row));
                                            });
    if (!begun) takeColumns(table);
    result_.errors.insert(result_.errors.begin(), table.errors.begin(), table.errors.end());
    finish(table);
    giveByName();
    return std::move(result_);
  }

 private:
  struct Row {
    OwnSpecies own;
    Species species;  // over the published one
    std::size_t line;
    std::string name;  // as it stands there
  };

  void giveByName() {
    std::vector<Row*> rows;
    for (Row& row : found_) rows.push_back(&row);
    std::ranges::sort(rows, {},
                      [](const Row* row) { return std::string_view(row->own.botanicalName); });
    result_.plants.reserve(rows.size());
    result_.species.reserve(rows.size());
    for (Row* row : rows) {
      result_.plants.push_back(std::move(row->own));
      result_.species.push_back(std::move(row->species));
      result_.lines.push_back(row->line);
      result_.names.push_back(std::move(row->name));
    }
  }

  void fail(std::size_t line, std::string_view column, std::string value, std::string expected) {
    result_.errors.push_back(
        {std::string(fileName_), line, std::string(column), std::move(value), std::move(expected)});
  }

  void finish(const PlantTable& table) {
    const std::size_t header = table.headerLine;
    for (const CatalogueError& error : result_.errors)
      if (header > 0 && error.line > header) result_.rowsLeft.insert(error.line);
    result_.canBeRewritten = header > 0 && table.places.contains(kName);
    columnsWanted_.tell(fileName_, header, result_.errors);
    sortByLine(result_.errors);
  }

  // Cells of those that are not known are left out.
  void takeColumns(const PlantTable& table) {
    for (const auto& [column, at] : table.places) {
      if (isPlantColumn(column))
        places_.emplace(column, at);
      else
        fail(table.headerLine, "", column, "a column of the plant table; its values are not used");
    }
  }

  void readRow(TableRow row) {
    const std::size_t line = row.line;
    OwnSpecies own = ownPlantOf(std::move(row), places_);
    if (own.botanicalName.empty()) return fail(line, kName, "", "some text");
    std::string written = own.botanicalName;
    const Species* published = plantCalled(written, published_);
    if (published != nullptr) takeAs(*published, own);
    if (names_.contains(own.botanicalName))
      return fail(line, kName, written, "a name of its own, for an earlier row has it");
    std::optional<Species> species;
    if (!own.facts.empty()) {
      keepSources(own, published);
      species = whole(line, own, published);
      if (!species) return;
    }
    // A row that cannot be used does not stand in the way of another.
    names_.insert(own.botanicalName);
    if (!species) ++result_.rowsWithoutNews;
    if (species) found_.push_back({std::move(own), std::move(*species), line, written});
  }

  // What it says otherwise than that plant.
  static void takeAs(const Species& published, OwnSpecies& own) {
    takeName(own, published.botanicalName);
    const PlantCells there = cellsOf(published);
    std::erase_if(own.facts, [&](const OwnFact& fact) {
      const auto same = there.find(fact.column);
      return fact.column != kSources && same != there.end() && same->second == fact.value;
    });
    if (own.facts.size() == 1 && own.facts.front().column == kSources) own.facts.clear();
  }

  // Those of the values kept, but for a key that the published value has: it does not tell of
  // another one. What cannot be read is left to be told of.
  static void keepSources(OwnSpecies& own, const Species* published) {
    const auto cell = std::ranges::find(own.facts, kSources, &OwnFact::column);
    if (cell == own.facts.end()) return;
    std::array<std::string_view, kPlantColumns.size() + 1> keys{};  // the last for no column
    const bool read = forEachSource(cell->value, [&](std::string_view field, std::string_view its) {
      if (auto& known = keys[plantColumnAt(field)]; known.empty()) known = withoutOwn(its);
    });
    if (!read) return;
    keys.back() = {};
    std::vector<FactSource> kept;
    for (const OwnFact& fact : own.facts) {
      const std::string_view its = keys[plantColumnAt(fact.column)];
      if (!its.empty() && (published == nullptr || published->sourceOf(fact.column) != its))
        addTo(kept, fact.column, its);
    }
    cell->value = sourcesText(kept);
    if (cell->value.empty()) own.facts.erase(cell);
  }

  // Nothing, and what is wrong is told, where it cannot be used.
  std::optional<Species> whole(std::size_t line, const OwnSpecies& own, const Species* published) {
    const auto old = personal_.find(own.botanicalName);
    std::vector<CatalogueError> errors;
    std::optional<Species> species;
    if (old == personal_.end())
      species = speciesOver(published, own, errors);
    else
      errors = faultsWith(published_, *old->second, own, fileName_, line);
    for (CatalogueError& error : errors) {
      error.file = fileName_, error.line = line;
      if (!columnsWanted_.take(error, places_)) result_.errors.push_back(std::move(error));
    }
    if (!errors.empty()) result_.rowsLeft.insert(line);
    if (errors.empty() && !species) species.emplace();  // beside an old one it is not asked for
    return species;
  }

  std::string_view fileName_;
  const Catalogue& published_;
  std::map<std::string_view, const OwnSpecies*> personal_;
  ColumnPlaces places_;
  ColumnsWanted columnsWanted_;
  std::set<std::string> names_;
  std::deque<Row> found_;  // never moved as it grows: a row holds much
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

std::vector<PlantCells> recordsOf(const std::vector<OwnSpecies>& plants) {
  std::vector<PlantCells> rows;
  for (const OwnSpecies& own : plants) {
    PlantCells cells{{std::string(kName), own.botanicalName}};
    for (const OwnFact& fact : own.facts) cells.insert_or_assign(fact.column, fact.value);
    rows.push_back(std::move(cells));
  }
  return rows;
}

}  // namespace

OwnPlantsReading readOwnPlants(std::string_view csv, std::string_view fileName,
                               const Catalogue& published) {
  return OwnPlantsReader(fileName, published, {}).read(csv);
}

BroughtIn bringInPlants(std::string_view csv, std::string_view fileName, const Catalogue& published,
                        const std::vector<OwnSpecies>& personal) {
  OwnPlantsReading read = OwnPlantsReader(fileName, published, personal).read(csv);
  BroughtIn result{{}, {}, std::move(read.errors), std::move(read.rowsLeft), read.rowsWithoutNews};
  const Yard none;
  EntryChecks checks({published, personal, none});
  for (std::size_t i = 0; i < read.plants.size(); ++i) {
    OwnSpecies& own = read.plants[i];
    const auto errors = checks.of(own, fileName, read.lines[i]);
    result.errors.insert(result.errors.end(), errors.begin(), errors.end());
    if (!errors.empty()) {
      result.rowsLeft.insert(read.lines[i]);
      continue;
    }
    const bool known = checks.knowsGenusOf(own.botanicalName);
    checks.take(own);
    if (!known) addFamilyNote(own, fileName, read.lines[i], result.notes);
    addSynonymNote(read.names[i], own, fileName, read.lines[i], result.notes);
    addWeekNotes(own, published.find(own.botanicalName), fileName, read.lines[i], result.notes);
    result.taken.push_back(std::move(own));
  }
  sortByLine(result.errors);
  std::ranges::stable_sort(result.notes, {}, &RowNote::line);
  result.gaveWay = overwritten(personal, result.taken);
  return result;
}

std::string manyPlantsWords(std::size_t plants) {
  constexpr std::size_t kMany = 20'000, kEachSecond = 8'000;
  if (plants <= kMany) return {};
  return fmt::format(
      "That makes {} plants of your own. All are read each time the window starts and by each "
      "command, which takes some {} seconds. If you do not need them all, keep a smaller table.",
      plants, plants / kEachSecond);
}

std::vector<std::string> filledColumns(const std::vector<OwnSpecies>& plants) {
  std::set<std::string_view> filled{kName};
  for (const OwnSpecies& own : plants)
    for (const OwnFact& fact : own.facts) filled.insert(fact.column);
  std::vector<std::string> columns;
  for (const std::string_view column : kPlantColumns)
    if (filled.contains(column)) columns.emplace_back(column);
  return columns;
}

std::string ownPlantsCsv(const std::vector<OwnSpecies>& plants) {
  return tableOf(filledColumns(plants), recordsOf(plants));
}

std::set<std::size_t> rowsOf(const std::vector<OwnSpecies>& plants, std::string_view csv,
                             const std::set<std::size_t>& lines) {
  std::set<std::vector<std::string>> names;
  for (const OwnSpecies& own : plants) names.insert(searchWords(own.botanicalName));
  std::set<std::size_t> theirs;
  for (const auto& [line, name] : KeptRows(csv, lines).names(kName))
    if (names.contains(searchWords(name))) theirs.insert(line);
  return theirs;
}

std::string plantsCsv(const Catalogue& catalogue) {
  std::vector<PlantCells> rows;
  const Catalogue north = catalogue.in(Hemisphere::North);  // as the table has weeks and months
  for (const Species& species : north.species()) rows.push_back(cellsOf(species));
  return tableOf({kPlantColumns.begin(), kPlantColumns.end()}, rows);
}

}  // namespace tussock
