// SPDX-License-Identifier: MIT
// The rows of a table that could not be used, as they stand there.
#pragma once

#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace tussock {

class KeptRows {
 public:
  // The rows of `csv` that begin on one of `lines`; `csv` must have a line of column names and must
  // live on.
  KeptRows(std::string_view csv, const std::set<std::size_t>& lines);

  [[nodiscard]] const std::vector<std::string>& columns() const { return columns_; }
  // In their order, byte for byte. Each that has a cell for every column gets empty ones, up to as
  // many as `columns`; one that is out of step or has an open quotation mark stays as it is.
  [[nodiscard]] std::string text(std::size_t columns) const;
  // What each has in that column, by line; without those that have no such cell.
  [[nodiscard]] std::map<std::size_t, std::string> names(std::string_view column) const;

 private:
  struct Row {
    std::size_t line = 0;
    std::string_view text;  // with its line end
    bool inStep = false;    // as many cells as columns
  };

  std::vector<std::string> columns_;
  std::vector<Row> rows_;
};

}  // namespace tussock
