// SPDX-License-Identifier: MIT
// One bit for each column of a row, and for the one past the last.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/sun/row_spans.h"

namespace tussock {

// All columns given lie within those of the last `clear`, or are the one past them.
class ColumnBits {
 public:
  void clear(Columns columns) {
    first_ = wordOf(columns.from), end_ = wordOf(columns.to) + 1;
    if (words_.size() < end_) words_.resize(end_);
    for (std::size_t i = first_; i < end_; ++i) words_[i] = 0;
  }
  void set(int column) { words_[wordOf(column)] |= maskOf(column); }
  // Those set, from low to high.
  template <class Visit>
  void each(Visit visit) const {
    for (std::size_t i = first_; i < end_; ++i)
      for (std::uint64_t left = words_[i]; left != 0; left &= left - 1)
        visit(static_cast<int>(i * 64u) + std::countr_zero(left));
  }

 private:
  static std::size_t wordOf(int column) { return static_cast<std::size_t>(column) / 64u; }
  static std::uint64_t maskOf(int column) {
    return std::uint64_t{1} << (static_cast<unsigned>(column) % 64u);
  }

  std::size_t first_ = 0, end_ = 0;  // words in use
  std::vector<std::uint64_t> words_;
};

}  // namespace tussock
