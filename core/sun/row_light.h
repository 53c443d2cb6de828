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
  // than its columns); taken back with `units` below 0, to the last unit.
  void add(const std::vector<Span>& spans, double units, std::int64_t* changes);

 private:
  struct Event {
    std::uint64_t order;  // by column, then group, entering before leaving
    double openness;
  };
  struct Dimmed {
    int group;
    double openness;
  };
  void sortEvents(const std::vector<Span>& spans);
  void pass(const Event& event);
  [[nodiscard]] double lost() const;

  std::vector<Event> events_;
  // Of the place at hand: how many shadows of each group lie over it, how many groups keep all off,
  // and the others in order, so that the light does not depend on what was passed before.
  std::vector<int> over_;
  int opaque_ = 0;
  std::vector<Dimmed> dimmed_;
};

}  // namespace tussock
