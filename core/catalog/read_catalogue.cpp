// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/catalog/catalogue.h"
#include "core/catalog/resources.h"
#include "core/catalog/species_row.h"

namespace tussock {

namespace {

// Without these no row can be read.
constexpr std::array<std::string_view, 10> kNeeded{
    "botanical_name", "family",    "genus",      "layer_form", "height_min_cm",
    "height_max_cm",  "spread_cm", "spacing_cm", "sun",        "moisture"};

class CatalogueReader {
 public:
  explicit CatalogueReader(std::string_view fileName) : fileName_(fileName) {}

  CatalogueReading read(std::string_view csv) {
    const Table table = readTable(csv);
    for (const std::size_t line : table.badQuotes)
      fail(line, "", "", "a closing quotation mark, or a doubled one inside a field,");
    if (table.rows.empty()) {
      fail(1, "", "", "a line of column names");
    } else if (readHeader(table.rows.front())) {
      for (std::size_t i = 1; i < table.rows.size(); ++i) readRow(table.rows[i]);
    }
    return {Catalogue(std::move(species_)), std::move(errors_)};
  }

 private:
  void fail(std::size_t line, std::string_view column, std::string value, std::string expected) {
    errors_.push_back(
        {std::string(fileName_), line, std::string(column), std::move(value), std::move(expected)});
  }

  // False when rows cannot be read for want of a column.
  bool readHeader(const TableRow& header) {
    for (std::size_t i = 0; i < header.cells.size(); ++i)
      if (!places_.try_emplace(header.cells[i], i).second)
        fail(header.line, header.cells[i], "", "one column of this name, not two");
    for (const std::string_view column : kPlantColumns)
      if (!places_.contains(column)) fail(header.line, column, "", "a column of this name");
    columns_ = header.cells.size();
    return std::all_of(kNeeded.begin(), kNeeded.end(),
                       [&](std::string_view column) { return places_.contains(column); });
  }

  void readRow(const TableRow& row) {
    if (row.cells.size() != columns_)
      return fail(row.line, "", fmt::format("{} fields", row.cells.size()),
                  fmt::format("{} fields, as the first line has", columns_));
    for (const std::string& cell : row.cells)
      if (!isUtf8(cell)) return fail(row.line, "", "", "text in UTF-8");
    auto species = speciesFromRow(row, places_, fileName_, errors_);
    if (!species) return;
    if (!names_.insert(species->botanicalName).second)
      return fail(row.line, "botanical_name", species->botanicalName,
                  "a name that no earlier row has");
    species_.push_back(std::move(*species));
  }

  std::string_view fileName_;
  ColumnPlaces places_;
  std::size_t columns_ = 0;
  std::vector<Species> species_;
  std::set<std::string> names_;
  std::vector<CatalogueError> errors_;
};

}  // namespace

std::string CatalogueError::text() const {
  std::string where = fmt::format("{}, line {}", file, line);
  if (!column.empty()) where += ", " + column;
  if (value.empty()) return fmt::format("{}: {} is missing.", where, expected);
  return fmt::format("{}: '{}' is not {}.", where, value, expected);
}

CatalogueReading readCatalogue(std::string_view csv, std::string_view fileName) {
  return CatalogueReader(fileName).read(csv);
}

CatalogueReading readShippedCatalogue() {
  const auto path = resourceFolder() / "plants.csv";
  return readCatalogue(readFile(path), path.filename().string());
}

}  // namespace tussock
