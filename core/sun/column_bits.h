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
  void set(Columns columns) {
    eachWord(columns, [this](std::size_t i, std::uint64_t mask) { words_[i] |= mask; });
  }
  [[nodiscard]] bool has(int column) const {
    return (words_[wordOf(column)] & maskOf(column)) != 0;
  }
  [[nodiscard]] bool hasAll(Columns columns) const {
    bool all = true;
    eachWord(columns,
             [&](std::size_t i, std::uint64_t mask) { all = all && (words_[i] & mask) == mask; });
    return all;
  }
  // Sets where runs of `other`, cleared for the same columns, begin and where they have ended.
  void setEdgesOf(const ColumnBits& other) {
    std::uint64_t last = 0;
    for (std::size_t i = other.first_; i < other.end_; ++i) {
      const std::uint64_t word = other.words_[i];
      words_[i] |= word ^ (word << 1u | last);
      last = word >> 63u;
    }
  }
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
  static std::uint64_t maskFrom(int column) { return ~(maskOf(column) - 1); }
  template <class Visit>
  static void eachWord(Columns columns, Visit visit) {
    const std::size_t first = wordOf(columns.from), last = wordOf(columns.to);
    const std::uint64_t low = maskFrom(columns.from), high = ~maskFrom(columns.to);
    if (first == last) return visit(first, low & high);
    visit(first, low);
    for (std::size_t i = first + 1; i < last; ++i) visit(i, ~std::uint64_t{0});
    if (high != 0) visit(last, high);
  }

  std::size_t first_ = 0, end_ = 0;  // words in use
  std::vector<std::uint64_t> words_;
};

}  // namespace tussock
