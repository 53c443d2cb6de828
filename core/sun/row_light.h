// SPDX-License-Identifier: MIT
// The light that shadows keep from a row of cells, entered as a change where it changes.
#pragma once

#include <cstdint>
#include <vector>

#include "core/sun/column_bits.h"
#include "core/sun/row_spans.h"

namespace tussock {

// Hours are counted in units so small that rounding does not show; whole numbers add up to the same
// in any order.
inline constexpr double kUnitsPerHour = 1LL << 40;
[[nodiscard]] std::int64_t wholeUnits(double units);  // nearest; halves go away from 0

class RowLight {
 public:
  // `units` of sun, less what gets through the spans, added to the changes of the row (one more
  // than its columns); taken back with `units` below 0, to the last unit. Spans are in order of
  // group; those of one group have one openness.
  void add(const std::vector<Span>& spans, double units, std::int64_t* changes);

 private:
  // From one place where the light changes to the next.
  struct Stretch {
    int from;
    int dimmedBy = -1;  // the last group that did
    double through = 1.0;
  };
  void sortOut(const std::vector<Span>& spans);
  void findStretches();
  void dim();

  ColumnBits dark_;           // columns that no light reaches
  std::vector<Span> dimmed_;  // shadows that some light gets through, but those wholly in the dark
  ColumnBits places_;         // where the light changes
  std::vector<Stretch> stretches_;
  std::vector<std::size_t> stretchAt_;  // by column, at the places
};

}  // namespace tussock
