// SPDX-License-Identifier: MIT
// What lies in the dark at a step, one bit for each column of each row: shadows that let nothing
// through run together however they overlap.
#pragma once

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/sun/row_spans.h"

namespace tussock {

// Columns given are within those asked for and never none.
class DarkRows {
 public:
  explicit DarkRows(const Grid& grid)
      : words_(wordsOf(grid.asked)),
        bits_(words_.back()),
        around_(static_cast<std::size_t>(grid.asked.rows()), kNone) {}

  void darken(int row, Columns columns) {
    Columns& around = around_[static_cast<std::size_t>(row)];
    around = {std::min(around.from, columns.from), std::max(around.to, columns.to)};
    std::uint64_t* const bits = bitsOf(row);
    const Words in(columns);
    if (in.first == in.last) {
      bits[in.first] |= in.firstMask & in.lastMask;
      return;
    }
    bits[in.first] |= in.firstMask;
    for (std::size_t i = in.first + 1; i < in.last; ++i) bits[i] = ~std::uint64_t{0};
    bits[in.last] |= in.lastMask;
  }

  [[nodiscard]] bool isDark(int row, Columns columns) const {
    const Columns around = around_[static_cast<std::size_t>(row)];
    if (columns.from < around.from || columns.to > around.to) return false;
    const std::uint64_t* const bits = bitsOf(row);
    const Words in(columns);
    if (in.first == in.last) return (~bits[in.first] & in.firstMask & in.lastMask) == 0;
    std::uint64_t lit = (~bits[in.first] & in.firstMask) | (~bits[in.last] & in.lastMask);
    for (std::size_t i = in.first + 1; i < in.last; ++i) lit |= ~bits[i];
    return lit == 0;
  }

  // Tells the row's dark runs from west to east, and leaves it light.
  template <class Visit>
  void takeRuns(int row, Visit visit) {
    Columns& around = around_[static_cast<std::size_t>(row)];
    if (around.from >= around.to) return;
    std::uint64_t* const bits = bitsOf(row);
    std::uint64_t before = 0;
    int from = -1;
    const std::size_t last = wordOf(around.to);
    for (std::size_t i = wordOf(around.from); i <= last; ++i) {
      const std::uint64_t dark = bits[i];
      bits[i] = 0;
      for (std::uint64_t left = dark ^ (dark << 1U | before); left != 0; left &= left - 1) {
        const int column = static_cast<int>(i * 64u) + std::countr_zero(left);
        if (from >= 0) visit(Columns{from, column});
        from = from < 0 ? column : -1;
      }
      before = dark >> 63U;
    }
    around = kNone;
  }

 private:
  static constexpr Columns kNone{1 << 30, 0};
  static std::size_t wordOf(int column) { return static_cast<std::size_t>(column) / 64u; }
  // The words that columns lie in, and which bits of the first and the last.
  struct Words {
    explicit Words(Columns columns)
        : first(wordOf(columns.from)),
          last(wordOf(columns.to - 1)),
          firstMask(~std::uint64_t{0} << (static_cast<unsigned>(columns.from) % 64u)),
          lastMask(~std::uint64_t{0} >> (63u - static_cast<unsigned>(columns.to - 1) % 64u)) {}
    std::size_t first, last;
    std::uint64_t firstMask, lastMask;
  };
  // The bit past the last column is there too and never set, so that every run ends.
  static std::vector<std::size_t> wordsOf(const AskedCells& asked) {
    std::vector<std::size_t> starts{0};
    for (int row = 0; row < asked.rows(); ++row) {
      const int width = asked.width(row);
      starts.push_back(starts.back() + (width > 0 ? wordOf(width) + 1 : 0));
    }
    return starts;
  }
  std::uint64_t* bitsOf(int row) { return bits_.data() + words_[static_cast<std::size_t>(row)]; }
  [[nodiscard]] const std::uint64_t* bitsOf(int row) const {
    return bits_.data() + words_[static_cast<std::size_t>(row)];
  }

  std::vector<std::size_t> words_;  // where each row starts, and the end
  std::vector<std::uint64_t> bits_;
  std::vector<Columns> around_;  // by row, all that is dark
};

}  // namespace tussock
