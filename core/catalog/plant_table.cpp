// SPDX-License-Identifier: MIT
#include "core/catalog/plant_table.h"

#include <algorithm>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/formula_guard.h"
#include "core/catalog/plant_cells.h"

namespace tussock {

namespace {

// Without these no row of a whole table can be read.
constexpr std::array<std::string_view, 10> kNeeded{
    "botanical_name", "family",    "genus",      "layer_form", "height_min_cm",
    "height_max_cm",  "spread_cm", "spacing_cm", "sun",        "moisture"};

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

// The column that a heading stands for but for capitals, blanks and hyphens; empty for one that is
// written as it should be, or stands for none.
std::string_view columnMeant(std::string_view heading) {
  std::string plain;
  for (const char c : heading) {
    const bool blank = c == ' ' || c == '-';
    const char low = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    plain += blank ? '_' : low;
  }
  while (plain.ends_with('_')) plain.pop_back();
  plain.erase(0, std::min(plain.find_first_not_of('_'), plain.size()));
  if (plain == heading) return {};
  const auto at = std::find(kPlantColumns.begin(), kPlantColumns.end(), plain);
  return at == kPlantColumns.end() ? std::string_view() : *at;
}

// Spreadsheets, pictures and yard files hold many zero bytes near their beginning; a text may have
// one by a slip.
bool isNoText(std::string_view csv) {
  constexpr std::size_t kLooked = 4096;
  constexpr std::ptrdiff_t kSlips = 4;
  return std::ranges::count(csv.substr(0, kLooked), '\0') > kSlips;
}

// The first one that is not blank, without its end, and its number from 1.
std::pair<std::size_t, std::string_view> firstLine(std::string_view csv) {
  if (csv.starts_with(kByteOrderMark)) csv.remove_prefix(kByteOrderMark.size());
  const std::size_t start = csv.find_first_not_of(" \t\r\n");
  if (start == std::string_view::npos) return {1, {}};
  const char ending = csv.find('\n') == std::string_view::npos ? '\r' : '\n';  // as linesOf has it
  const auto before = std::ranges::count(csv.substr(0, start), ending);
  csv.remove_prefix(start);
  return {static_cast<std::size_t>(before) + 1, csv.substr(0, csv.find_first_of("\r\n"))};
}

// As a spreadsheet writes a row between others in which nothing stands.
bool isBlank(const TableRow& row) {
  return std::ranges::all_of(row.cells, [](const std::string& cell) { return cell.empty(); });
}

class PlantTableReader {
 public:
  PlantTableReader(std::string_view fileName, ColumnsAsked asked, const PlantRowTaker& taker)
      : fileName_(fileName), asked_(asked), taker_(taker) {}

  PlantTable read(std::string_view csv) {
    if (isUtf16(csv))
      return fail(1, "", "UTF-16", "text in UTF-8; save the file as CSV UTF-8"), take();
    if (isNoText(csv))
      return fail(1, "", "a file that is no text",
                  "a table as text; save the spreadsheet as CSV UTF-8"),
             take();
    if (!isSplitAtCommas(csv)) return take();
    bool begun = false, readable = false;
    const auto badQuotes = forEachRow(csv, [&](TableRow row) {
      if (begun) return readable ? takeRow(std::move(row)) : void();
      begun = true;
      readable = readHeader(row);
    });
    for (const std::size_t line : badQuotes)
      fail(line, "", "", "a closing quotation mark, or a doubled one inside a field,");
    if (!begun) fail(1, "", "", "a line of column names");
    tellNameless();
    return take();
  }

 private:
  PlantTable take() { return std::move(result_); }

  void fail(std::size_t line, std::string_view column, std::string value, std::string expected) {
    result_.errors.push_back(
        {std::string(fileName_), line, std::string(column), std::move(value), std::move(expected)});
  }

  void tell(std::size_t line, std::string_view column, std::string words) {
    result_.errors.push_back(
        {std::string(fileName_), line, std::string(column), {}, {}, std::move(words)});
  }

  // False when rows cannot be read for want of a column.
  bool readHeader(const TableRow& header) {
    columns_ = header.cells.size();
    result_.headerLine = header.line;
    for (std::size_t i = 0; i < columns_; ++i) placeColumn(header, i);
    return asked_ == ColumnsAsked::All ? hasAll(header.line) : hasName(header.line);
  }

  // By the line itself: quotation marks in a table that is split otherwise are no fault of their
  // own.
  bool isSplitAtCommas(std::string_view csv) {
    const auto [number, line] = firstLine(csv);
    const std::size_t mark = line.find_first_of(";\t");
    if (mark == std::string_view::npos || line.find(',') != std::string_view::npos) return true;
    fail(number, "", std::string(line.substr(0, 40)),
         fmt::format("a line of column names with commas between them; these have {}, so save the "
                     "table as CSV with commas",
                     line[mark] == ';' ? "semicolons" : "tabs"));
    return false;
  }

  void placeColumn(const TableRow& header, std::size_t at) {
    const std::string& written = header.cells[at];
    const std::string_view meant = columnMeant(written);
    if (written.empty()) {
      nameless_.push_back(at);
    } else if (!meant.empty()) {
      misspelt_.insert(meant);
      fail(header.line, meant, written, fmt::format("{}, as that column is written", meant));
    } else {
      const auto [first, isNew] = result_.places.try_emplace(written, at);
      if (!isNew && isPlantColumn(written)) tellDoubled(header.line, written, first->second, at);
    }
  }

  void tellDoubled(std::size_t line, const std::string& name, std::size_t first, std::size_t at) {
    tell(line, name,
         fmt::format("columns {0} and {1} both have this name. Column {0} counts; the values of "
                     "column {1} are left out.",
                     first + 1, at + 1));
  }

  // A spreadsheet writes columns that are blank throughout behind the last one: these are no fault.
  void tellNameless() {
    for (const std::size_t at : namelessFilled_)
      tell(result_.headerLine, "", fmt::format("column {} has no name; it is left out.", at + 1));
  }

  // Told once: of a column written otherwise it is said what to write.
  void wants(std::size_t line, std::string_view column) {
    if (!has(column) && !misspelt_.contains(column))
      fail(line, column, "", "a column of this name");
  }

  bool hasAll(std::size_t line) {
    for (const std::string_view column : kPlantColumns) wants(line, column);
    return std::all_of(kNeeded.begin(), kNeeded.end(), [&](auto column) { return has(column); });
  }

  bool hasName(std::size_t line) {
    wants(line, kPlantColumns.front());
    return has(kPlantColumns.front());
  }

  [[nodiscard]] bool has(std::string_view column) const { return result_.places.contains(column); }

  void takeRow(TableRow row) {
    if (isBlank(row)) return;
    for (const std::size_t at : nameless_)
      if (at < row.cells.size() && !row.cells[at].empty()) namelessFilled_.insert(at);
    if (row.cells.size() != columns_)
      return fail(row.line, "", fmt::format("{} fields", row.cells.size()),
                  fmt::format("{} fields, as the first line has", columns_));
    bool readable = true;
    for (const auto& [column, at] : result_.places)
      readable = isReadable(row.line, column, row.cells[at]) && readable;
    if (readable && taker_) return taker_(std::move(row), result_);
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
  const PlantRowTaker& taker_;
  std::vector<std::size_t> nameless_;  // places of columns without a heading
  std::set<std::size_t> namelessFilled_;
  std::set<std::string_view> misspelt_;  // columns that are there, written otherwise
  PlantTable result_;
};

}  // namespace

PlantTable readPlantTable(std::string_view csv, std::string_view fileName, ColumnsAsked asked,
                          const PlantRowTaker& take) {
  return PlantTableReader(fileName, asked, take).read(csv);
}

PlantTable readPlantTable(std::string_view csv, std::string_view fileName, ColumnsAsked asked) {
  return readPlantTable(csv, fileName, asked, {});
}

void sortByLine(std::vector<CatalogueError>& errors) {
  std::stable_sort(
      errors.begin(), errors.end(),
      [](const CatalogueError& a, const CatalogueError& b) { return a.line < b.line; });
}

OwnSpecies ownPlantOf(TableRow row, const ColumnPlaces& places) {
  OwnSpecies own;
  const auto blank = std::ranges::count(row.cells, std::string());
  own.facts.reserve(row.cells.size() - static_cast<std::size_t>(blank));
  for (const auto& [column, at] : places) {
    if (at >= row.cells.size() || row.cells[at].empty()) continue;
    std::string cell = std::move(row.cells[at]);
    if (mayBeGuarded(cell)) cell = unguarded(cell);
    if (column == kPlantColumns.front())
      own.botanicalName = std::move(cell);
    else
      own.facts.push_back({column, std::move(cell)});
  }
  return own;
}

}  // namespace tussock
