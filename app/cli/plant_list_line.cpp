// SPDX-License-Identifier: MIT
#include "app/cli/plant_list_line.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

#include "core/catalog/table.h"

namespace tussock {

namespace {

constexpr std::array<std::string_view, 8> kBotanical{
    "species", "botanical name", "scientific name", "latin name",
    "name",    "plant",          "plant name",      "plants"};
constexpr std::array<std::string_view, 2> kCommon{"common name", "common names"};
constexpr std::array<std::string_view, 9> kShare{"share",     "shares",     "share %",
                                                 "share (%)", "share in %", "percent",
                                                 "per cent",  "percentage", "%"};

bool isAmong(const auto& word, const auto& words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

std::string headingOf(std::string cell) {
  for (char& c : cell)
    c = c == '_' ? ' ' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return cell;
}

// The first of them outside quotation marks, but for a tab that only stands before another.
char separatorIn(std::string_view line) {
  bool quoted = false;
  for (std::size_t i = line.find_first_not_of(" \t"); i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (quoted || (line[i] != ',' && line[i] != ';' && line[i] != '\t')) continue;
    const auto next = line.find_first_not_of(" \t", i);
    const bool other = next != std::string_view::npos && (line[next] == ',' || line[next] == ';');
    return line[i] == '\t' && other ? line[next] : line[i];
  }
  return ',';
}

// A tab before all else may stand for a cell in which nothing does.
std::string withoutEnd(std::string_view line) {
  return std::string(line.substr(0, line.find_last_not_of(" \t\r\n") + 1));
}

// Nothing where quotation marks are amiss.
std::optional<std::vector<std::string>> cellsIn(std::string_view line, char separator) {
  const Table table = readTable(line, separator);
  if (!table.badQuotes.empty() || table.rows.size() != 1) return std::nullopt;
  std::vector<std::string> cells;
  for (const std::string& cell : table.rows.front().cells) cells.push_back(trimmed(cell));
  return cells;
}

}  // namespace

std::string trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1));
}

// From a # on, at the start or after a blank, outside quotation marks.
std::string PlantListLines::withoutComment(std::string_view line) {
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (line[i] == '#' && !quoted && (i == 0 || line[i - 1] == ' ' || line[i - 1] == '\t'))
      return withoutEnd(line.substr(0, i));
  }
  return withoutEnd(line);
}

// Only where all that stands there are words of a heading: else it is a plant, or meant to be one.
bool PlantListLines::takeHeading(const std::vector<std::string>& cells) {
  std::vector<std::size_t> botanical, common;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const std::string heading = headingOf(cells[i]);
    if (isAmong(heading, kBotanical))
      botanical.push_back(i);
    else if (isAmong(heading, kCommon))
      common.push_back(i);
    else if (!heading.empty() && !isAmong(heading, kShare))
      return false;
  }
  if (botanical.empty() && common.empty()) return false;
  names_ = std::move(botanical);
  names_.insert(names_.end(), common.begin(), common.end());
  return true;
}

// Without a heading the first that is filled.
bool PlantListLines::isName(std::size_t column, const PlantListLine& read) const {
  return names_.empty() ? read.name.empty() : isAmong(column, names_);
}

std::optional<PlantListLine> PlantListLines::read(const std::string& line) {
  const char separator = heading_.value_or(separatorIn(line));
  auto cells = cellsIn(line, separator);
  // What was typed into one cell: the name with its share.
  if (cells && cells->size() == 1 && line.starts_with('"'))
    cells = cellsIn(cells->front(), separatorIn(cells->front()));
  if (!cells) return PlantListLine{line, std::nullopt, true};
  if (!std::exchange(begun_, true) && takeHeading(*cells)) {
    if (cells->size() > 1) heading_ = separator;
    return std::nullopt;
  }
  PlantListLine read;
  for (const std::size_t at : names_)
    if (read.name.empty() && at < cells->size()) read.name = (*cells)[at];
  for (std::size_t i = 0; i < cells->size(); ++i) {
    const std::string& cell = (*cells)[i];
    if (cell.empty()) continue;
    if (!isName(i, read))
      read.share = read.share ? *read.share + ", " + cell : cell;
    else if (read.name.empty())
      read.name = cell;
  }
  if (read.name.empty() && !read.share) return std::nullopt;
  return read;
}

}  // namespace tussock
