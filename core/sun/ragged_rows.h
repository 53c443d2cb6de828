// SPDX-License-Identifier: MIT
// Values of a grid's rows, of each only a range of its columns, one row after another: rows without
// beds take no memory, nor does what lies beside them. What lies between two in one row does.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace tussock {

struct Columns {
  int from = 0, to = 0;  // `to` is past the last

  [[nodiscard]] bool empty() const { return from >= to; }
  [[nodiscard]] bool contains(int column) const { return column >= from && column < to; }
};

// Empty rows have columns from 0 to 0.
class RaggedRows {
 public:
  RaggedRows() = default;
  explicit RaggedRows(const std::vector<Columns>& rows) {
    offsets_.reserve(rows.size());
    // The first row may begin far from column 0; its offset is still not below 0.
    for (const Columns& row : rows) {
      size_ = std::max(size_, static_cast<std::size_t>(row.from));
      offsets_.push_back(size_ - static_cast<std::size_t>(row.from));
      size_ += static_cast<std::size_t>(row.to - row.from);
    }
  }
  // Values to keep room for.
  [[nodiscard]] std::size_t size() const { return size_; }
  // To this a column is added to come to its value.
  [[nodiscard]] std::size_t of(int row) const { return offsets_[static_cast<std::size_t>(row)]; }

 private:
  std::vector<std::size_t> offsets_;
  std::size_t size_ = 0;
};

}  // namespace tussock
