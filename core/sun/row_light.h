// SPDX-License-Identifier: MIT
// The light that shadows keep from a row of cells, entered as a change where it changes.
#pragma once

#include <array>
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
  // The same for shadows that let light through beside dark runs that do not meet, from west to
  // east; both lie one after the other in one array.
  void add(std::span<const Span> dim, std::span<const Span> dark, double units,
           std::int64_t* changes);

 private:
  static constexpr std::size_t kFew = 4;
  // Shadows of different groups by where they begin; false when there are more, or when more than
  // two run together.
  bool sortFew(std::span<const Span> dim);
  void addPair(const Span& first, const Span& second, std::span<const Span> dark, double units,
               std::int64_t* changes);
  [[nodiscard]] std::int64_t kept(double units, Density density) {
    return wholeUnits(units * keeping_.off(density));
  }
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
  std::array<const Span*, kFew> few_{};
};

}  // namespace tussock
