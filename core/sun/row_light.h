// SPDX-License-Identifier: MIT
// The light that shadows keep from a row of cells, entered as a change where it changes.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/sun/column_bits.h"
#include "core/sun/density.h"
#include "core/sun/row_spans.h"

namespace tussock {

// Hours are counted in units so small that rounding does not show; whole numbers add up to the same
// in any order.
inline constexpr double kUnitsPerHour = 1LL << 40;
[[nodiscard]] std::int64_t wholeUnits(double units);  // nearest; halves go away from 0

// Part of a row in one shadow.
struct Span {
  Columns columns;
  Density density = 0;
  int group = 0;
  int step = 0;  // of those that the spans of a row are from
};

class RowLight {
 public:
  // `units` of sun, less what gets through the spans, added so many times to the changes of the
  // row (one more than its columns); taken back with `times` below 0, to the last unit. Spans are
  // in order of group; those of one group have one density, and count once where they overlap.
  void add(std::span<const Span> spans, double units, std::int64_t* changes,
           std::int64_t times = 1);

 private:
  void enter(std::span<const Span> spans);
  void enterJoined(std::span<const Span> ofOneGroup);
  void enter(Columns columns, Density density) {
    places_.set(columns.from), places_.set(columns.to);
    denser_[static_cast<std::size_t>(columns.from)] += density;
    denser_[static_cast<std::size_t>(columns.to)] -= density;
  }

  ColumnBits places_;            // where the light changes
  std::vector<Density> denser_;  // by column: by how much from there on; 0 between uses
  std::vector<Columns> joined_;  // of one group
  Keeping keeping_;
};

}  // namespace tussock
