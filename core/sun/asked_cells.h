// SPDX-License-Identifier: MIT
// The cells of a grid that are asked for, row by row: nothing is counted or kept of the others.
#pragma once

#include <algorithm>
#include <cstddef>
#include <span>
#include <vector>

namespace tussock {

struct Columns {
  int from = 0, to = 0;  // `to` is past the last

  [[nodiscard]] bool empty() const { return from >= to; }
};

class AskedCells {
 public:
  AskedCells() = default;
  AskedCells(int columns, int rows);  // all of them
  // Runs of columns of each row, in any order; those that meet are joined.
  explicit AskedCells(std::vector<std::vector<Columns>> rows);

  [[nodiscard]] int rows() const { return static_cast<int>(starts_.size()) - 1; }
  [[nodiscard]] std::size_t cells() const { return starts_.back(); }
  // From west to east, with others between.
  [[nodiscard]] std::span<const Columns> runs(int row) const {
    const auto at = static_cast<std::size_t>(row);
    return {runs_.data() + firstRuns_[at], firstRuns_[at + 1] - firstRuns_[at]};
  }
  // Cells of all rows before, for each row and past the last.
  [[nodiscard]] const std::vector<std::size_t>& starts() const { return starts_; }
  [[nodiscard]] int width(int row) const {
    const auto at = static_cast<std::size_t>(row);
    return static_cast<int>(starts_[at + 1] - starts_[at]);
  }
  // How many cells of the row lie west of a column: its place among them if it is asked for.
  [[nodiscard]] int place(int row, int column) const {
    const std::size_t run = runFor(row, column);
    if (run == firstRuns_[static_cast<std::size_t>(row) + 1]) return width(row);
    return before_[run] + std::max(0, column - runs_[run].from);
  }
  [[nodiscard]] bool contains(int column, int row) const {
    const std::size_t run = runFor(row, column);
    return run < firstRuns_[static_cast<std::size_t>(row) + 1] && column >= runs_[run].from;
  }
  // Calls with each column of the row that is asked for, from west to east.
  template <class Visit>
  void eachOf(int row, Visit visit) const {
    for (const Columns run : runs(row))
      for (int column = run.from; column < run.to; ++column) visit(column);
  }
  // With column and row of each cell.
  template <class Visit>
  void each(Visit visit) const {
    for (int row = 0; row < rows(); ++row) eachOf(row, [&](int column) { visit(column, row); });
  }

 private:
  // The first run of the row that does not end west of the column; past the row's last when all do.
  [[nodiscard]] std::size_t runFor(int row, int column) const {
    const auto at = static_cast<std::size_t>(row);
    const auto first = runs_.begin() + static_cast<std::ptrdiff_t>(firstRuns_[at]);
    const auto end = runs_.begin() + static_cast<std::ptrdiff_t>(firstRuns_[at + 1]);
    const auto run =
        std::partition_point(first, end, [column](Columns one) { return one.to <= column; });
    return static_cast<std::size_t>(run - runs_.begin());
  }

  std::vector<Columns> runs_;
  std::vector<int> before_;                // by run: cells of its row west of it
  std::vector<std::size_t> firstRuns_{0};  // by row, into runs
  std::vector<std::size_t> starts_{0};
};

}  // namespace tussock
