// SPDX-License-Identifier: MIT
#include "core/catalog/plant_table.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/formula_guard.h"

namespace tussock {

namespace {

// Without these no row of a whole table can be read.
constexpr std::array<std::string_view, 10> kNeeded{
    "botanical_name", "family",    "genus",      "layer_form", "height_min_cm",
    "height_max_cm",  "spread_cm", "spacing_cm", "sun",        "moisture"};

bool isUtf16(std::string_view text) {
  const bool byTurns = text.size() > 1 && (text[0] == '\0') != (text[1] == '\0');
  return text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF") || byTurns;
}

// As it reads in Latin-1, which is what it most likely is in: so one sees which value it is.
std::string fromLatin1(std::string_view text) {
  std::string utf8;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x80) {
      utf8 += c;
    } else {
      utf8 += static_cast<char>(0xC0U | (byte >> 6U));
      utf8 += static_cast<char>(0x80U | (byte & 0x3FU));
    }
  }
  return utf8;
}

class PlantTableReader {
 public:
  PlantTableReader(std::string_view fileName, ColumnsAsked asked)
      : fileName_(fileName), asked_(asked) {}

  PlantTable read(std::string_view csv) {
    if (isUtf16(csv))
      return fail(1, "", "UTF-16", "text in UTF-8; save the file as CSV UTF-8"), take();
    Table table = readTable(csv);
    for (const std::size_t line : table.badQuotes)
      fail(line, "", "", "a closing quotation mark, or a doubled one inside a field,");
    if (table.rows.empty()) return fail(1, "", "", "a line of column names"), take();
    if (readHeader(table.rows.front()))
      for (std::size_t i = 1; i < table.rows.size(); ++i) takeRow(std::move(table.rows[i]));
    return take();
  }

 private:
  PlantTable take() { return std::move(result_); }

  void fail(std::size_t line, std::string_view column, std::string value, std::string expected) {
    result_.errors.push_back(
        {std::string(fileName_), line, std::string(column), std::move(value), std::move(expected)});
  }

  // False when rows cannot be read for want of a column.
  bool readHeader(const TableRow& header) {
    columns_ = header.cells.size();
    result_.headerLine = header.line;
    if (columns_ == 1 && header.cells.front().find(';') != std::string::npos)
      return fail(header.line, "", header.cells.front().substr(0, 40),
                  "a line of column names with commas between them"),
             false;
    for (std::size_t i = 0; i < columns_; ++i)
      if (!result_.places.try_emplace(header.cells[i], i).second)
        fail(header.line, header.cells[i], "two columns of this name", "one");
    return asked_ == ColumnsAsked::All ? hasAll(header.line) : hasName(header.line);
  }

  bool hasAll(std::size_t line) {
    for (const std::string_view column : kPlantColumns)
      if (!has(column)) fail(line, column, "", "a column of this name");
    return std::all_of(kNeeded.begin(), kNeeded.end(), [&](auto column) { return has(column); });
  }

  bool hasName(std::size_t line) {
    if (!has(kPlantColumns.front())) fail(line, kPlantColumns.front(), "", "a column of this name");
    return has(kPlantColumns.front());
  }

  [[nodiscard]] bool has(std::string_view column) const { return result_.places.contains(column); }

  void takeRow(TableRow row) {
    if (row.cells.size() != columns_)
      return fail(row.line, "", fmt::format("{} fields", row.cells.size()),
                  fmt::format("{} fields, as the first line has", columns_));
    bool readable = true;
    for (const auto& [column, at] : result_.places)
      readable = isReadable(row.line, column, row.cells[at]) && readable;
    if (readable) result_.rows.push_back(std::move(row));
  }

  bool isReadable(std::size_t line, const std::string& column, const std::string& cell) {
    if (cell.find('\0') != std::string::npos)
      return fail(line, column, "text with a NUL byte in it",
                  "text alone; the file is damaged there, so write the value again"),
             false;
    if (isUtf8(cell)) return true;
    return fail(line, column, fromLatin1(cell),
                "in UTF-8 (it is shown as Latin-1 has it); save the file as CSV UTF-8"),
           false;
  }

  std::string_view fileName_;
  ColumnsAsked asked_;
  std::size_t columns_ = 0;
  PlantTable result_;
};

}  // namespace

PlantTable readPlantTable(std::string_view csv, std::string_view fileName, ColumnsAsked asked) {
  return PlantTableReader(fileName, asked).read(csv);
}

void sortByLine(std::vector<CatalogueError>& errors) {
  std::stable_sort(
      errors.begin(), errors.end(),
      [](const CatalogueError& a, const CatalogueError& b) { return a.line < b.line; });
}

PlantCells cellsOf(const TableRow& row, const ColumnPlaces& places) {
  PlantCells cells;
  for (const auto& [column, at] : places)
    if (at < row.cells.size() && !row.cells[at].empty())
      cells.emplace(column, unguarded(row.cells[at]));
  return cells;
}

}  // namespace tussock
