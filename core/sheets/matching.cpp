// SPDX-License-Identifier: MIT
#include "core/sheets/matching.h"

#include <limits>

namespace tussock {

namespace {

// Columns and rows count from 1; 0 is the row being added.
class Matching {
 public:
  Matching(std::size_t rows, std::size_t columns,
           const std::function<double(std::size_t, std::size_t)>& cost)
      : cost_(cost),
        rowPrice_(rows + 1),
        columnPrice_(columns + 1),
        rowOf_(columns + 1),
        before_(columns + 1) {}

  void add(std::size_t row) {
    rowOf_[0] = row;
    std::size_t column = cheapestWay();
    while (column != 0) {  // turn the way over
      rowOf_[column] = rowOf_[before_[column]];
      column = before_[column];
    }
  }

  [[nodiscard]] std::size_t rowOf(std::size_t column) const { return rowOf_[column]; }

 private:
  // Grows a tree of tight edges from column 0 until it meets a free column.
  std::size_t cheapestWay() {
    slack_.assign(columnPrice_.size(), std::numeric_limits<double>::infinity());
    reached_.assign(columnPrice_.size(), false);
    std::size_t column = 0;
    do {
      reached_[column] = true;
      column = extend(column);
    } while (rowOf_[column] != 0);
    return column;
  }

  std::size_t extend(std::size_t from) {
    const std::size_t row = rowOf_[from];
    std::size_t nearest = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t j = 1; j < columnPrice_.size(); ++j) {
      if (reached_[j]) continue;
      const double rest = cost_(row - 1, j - 1) - rowPrice_[row] - columnPrice_[j];
      if (rest < slack_[j]) slack_[j] = rest, before_[j] = from;
      if (slack_[j] < least) least = slack_[j], nearest = j;
    }
    for (std::size_t j = 0; j < columnPrice_.size(); ++j) {
      if (reached_[j]) {
        rowPrice_[rowOf_[j]] += least, columnPrice_[j] -= least;
      } else {
        slack_[j] -= least;
      }
    }
    return nearest;
  }

  const std::function<double(std::size_t, std::size_t)>& cost_;
  std::vector<double> rowPrice_, columnPrice_, slack_;
  std::vector<std::size_t> rowOf_, before_;
  std::vector<bool> reached_;
};

}  // namespace

std::vector<std::size_t> cheapestMatching(
    std::size_t rows, std::size_t columns,
    const std::function<double(std::size_t, std::size_t)>& cost) {
  Matching matching(rows, columns, cost);
  for (std::size_t row = 1; row <= rows; ++row) matching.add(row);
  std::vector<std::size_t> result(rows);
  for (std::size_t column = 1; column <= columns; ++column)
    if (const std::size_t row = matching.rowOf(column)) result[row - 1] = column - 1;
  return result;
}

}  // namespace tussock
