// SPDX-License-Identifier: MIT
// Hours of sun had by the cells of a grid, as shadows take them away. A shadow is entered as a
// change where each row enters and leaves it, so a step costs by rows and shadows, not by cells;
// the changes are summed along the rows once, at the end.
#pragma once

#include <cstdint>
#include <vector>

#include "core/sun/shade.h"
#include "core/sun/sun_days.h"

namespace tussock {

struct Grid {
  Point low;          // south-western corner
  double cell = 0.0;  // metres
  int columns = 0, rows = 0;
};

class SunTally {
 public:
  explicit SunTally(const Grid& grid);

  // A part of a day: `hours` for every cell, less what the shadows over its centre keep from it.
  void take(const std::vector<Shadow>& shadows, double hours, HalfDay half);
  void add(const SunTally& other);
  // Hours had, cell by cell along a row.
  void row(HalfDay half, int row, std::vector<double>& hours) const;

 private:
  struct Span {
    int from, to;  // columns; `to` is past the last
    double openness;
    int group;
  };
  struct Event {
    int column, group;
    double openness;
    int change;
  };
  void collectSpans(const Shadow& shadow);
  void followEdge(Point from, Point to);
  void takeRow(const std::vector<Span>& spans, double units, std::int64_t* changes);

  Grid grid_;
  // By half day, in units so small that rounding does not show; whole numbers add up to the same in
  // any order.
  std::int64_t open_[2] = {0, 0};
  std::vector<std::int64_t> changes_[2];  // columns + 1 to a row
  std::vector<std::vector<Span>> spans_;  // by row, of the step at hand
  std::vector<int> from_, to_;            // by row, of the shadow at hand
  std::vector<Event> events_;
  std::vector<int> over_;  // how many shadows of each group lie over the place at hand
};

}  // namespace tussock
