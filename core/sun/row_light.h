// SPDX-License-Identifier: MIT
// The light that shadows keep from a row of cells, entered as a change where it changes.
#pragma once

#include <cstdint>
#include <vector>

#include "core/sun/row_spans.h"

namespace tussock {

// Hours are counted in units so small that rounding does not show; whole numbers add up to the same
// in any order.
inline constexpr double kUnitsPerHour = 1LL << 40;
[[nodiscard]] std::int64_t wholeUnits(double units);  // nearest; halves go away from 0

class RowLight {
 public:
  // `units` of sun, less what gets through the spans, added to the changes of the row (one more
  // than its columns); taken back with `units` below 0, to the last unit. Spans of one group have
  // one openness.
  void add(const std::vector<Span>& spans, double units, std::int64_t* changes);

 private:
  struct Dimmed {
    int group;
    double openness;
  };
  void joinOpaque(const std::vector<Span>& spans);
  [[nodiscard]] bool isDark(Columns columns) const;
  void sortEvents(const std::vector<Span>& spans);
  void pass(std::uint64_t event);
  [[nodiscard]] double lost() const;

  // Columns that no light reaches, in order and apart; and the same as numbers to be sorted.
  std::vector<Columns> dark_;
  std::vector<std::uint64_t> order_;
  // Where dimmed spans and dark columns begin and end: by column, then group.
  std::vector<std::uint64_t> events_;
  std::vector<double> openness_;  // by group
  // Of the place at hand: how many shadows of each group lie over it, whether it is dark, and the
  // groups that dim it in order, so that the light does not depend on what was passed before.
  std::vector<int> over_;
  bool isDark_ = false;
  std::vector<Dimmed> dimmed_;
};

}  // namespace tussock
