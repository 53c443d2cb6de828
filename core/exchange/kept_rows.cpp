// SPDX-License-Identifier: MIT
#include "core/exchange/kept_rows.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

#include "core/catalog/formula_guard.h"
#include "core/catalog/table.h"

namespace tussock {

namespace {

// Where each line begins, the first as line 1, and the end after the last.
std::vector<std::size_t> lineStarts(std::string_view text) {
  std::vector<std::size_t> starts{0, 0};
  for (const std::string_view line : linesOf(text)) starts.push_back(starts.back() + line.size());
  return starts;
}

}  // namespace

KeptRows::KeptRows(std::string_view csv, const std::set<std::size_t>& lines) {
  Table table = readTable(csv);
  if (table.rows.empty()) return;
  columns_ = std::move(table.rows.front().cells);
  std::map<std::size_t, bool> begins;  // lines on which rows begin: whether they are in step
  for (const TableRow& row : table.rows) begins[row.line] = row.cells.size() == columns_.size();
  for (const std::size_t line : table.badQuotes) begins[line] = false;
  const std::vector<std::size_t> starts = lineStarts(csv);
  for (auto row = begins.begin(); row != begins.end(); ++row) {
    if (!lines.contains(row->first)) continue;
    const auto next = std::next(row);
    const std::size_t from = starts[row->first];
    const std::size_t to = next == begins.end() ? csv.size() : starts[next->first];
    rows_.push_back({row->first, csv.substr(from, to - from), row->second});
  }
}

std::map<std::size_t, std::string> KeptRows::names(std::string_view column) const {
  std::map<std::size_t, std::string> names;
  const auto at = std::ranges::find(columns_, column) - columns_.begin();
  for (const Row& row : rows_) {
    const Table table = readTable(row.text);
    if (table.rows.empty()) continue;
    const std::vector<std::string>& cells = table.rows.front().cells;
    if (const auto place = static_cast<std::size_t>(at); place < cells.size())
      names.emplace(row.line, unguarded(cells[place]));
  }
  return names;
}

std::string KeptRows::text(std::size_t columns) const {
  std::string all;
  for (const Row& row : rows_) {
    const std::size_t end = row.text.find_last_not_of("\r\n") + 1;
    all += row.text.substr(0, end);
    if (row.inStep && columns > columns_.size()) all.append(columns - columns_.size(), ',');
    all += row.text.substr(end);
  }
  return all;
}

}  // namespace tussock
