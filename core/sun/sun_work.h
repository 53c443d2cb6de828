// SPDX-License-Identifier: MIT
// A sun map's work laid out: the grid, the classes of days and what they are counted towards. Used
// by the map and the map that follows edits.
#pragma once

#include <chrono>
#include <vector>

#include "core/sun/map.h"
#include "core/sun/row_spans.h"
#include "core/sun/sun_days.h"
#include "core/sun/sun_tally.h"

namespace tussock {

// The means that are kept: one of the whole span, or one for each of its months.
struct Spans {
  std::vector<std::chrono::month> months;  // empty: one mean of all days
  std::vector<int> days;                   // in each mean
};
struct Part {
  std::size_t mean = 0;  // which
  int days = 0;
};
// How the steps of a class of days are counted, so that rounding is the same wherever they are:
// some days at once where all count towards one mean, otherwise one day, times the days of each.
struct Counting {
  int atOnce = 1;
  std::vector<Part> parts;  // days: how many times what was counted at once
};

struct SunWork {
  SunMapRequest request;
  Grid grid;
  Solids solids;
  std::vector<DayClass> classes;
  Spans spans;
  Angle latitude, longitude;

  [[nodiscard]] Counting countingOf(const DayClass& days) const;
  [[nodiscard]] std::vector<SunStep> stepsOf(const DayClass& days) const;
};
// Cells that a map of the request keeps. Its area and cell must be finite.
[[nodiscard]] double cellsAsked(const SunMapRequest& request);
// Throws as computeSunMap does.
[[nodiscard]] SunWork workOf(const Yard& yard, const SunMapRequest& request);
// Sums of hours over all days, one count for each mean, as the map.
[[nodiscard]] SunMap mapOf(const SunWork& work, const std::vector<SunCount>& sums,
                           const Yard& yard);

}  // namespace tussock
