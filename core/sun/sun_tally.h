// SPDX-License-Identifier: MIT
// Hours of sun had by the cells of a grid, as shadows take them away. A shadow is entered as a
// change where each row enters and leaves it, so a step costs by rows and shadows, not by cells;
// the changes are summed along the rows once, at the end.
#pragma once

#include <cstdint>
#include <vector>

#include "core/sun/dark_rows.h"
#include "core/sun/row_light.h"
#include "core/sun/shade.h"
#include "core/sun/sun_days.h"

namespace tussock {

// By half day; see RowLight for units and changes.
struct SunCount {
  explicit SunCount(const Grid& grid);
  void clear();
  void add(const SunCount& other, std::int64_t times);
  // Hours had, cell by cell along what is asked of a row.
  void row(HalfDay half, int row, std::vector<double>& hours) const;
  // By place among the row's cells asked for, and one more.
  [[nodiscard]] std::int64_t* changesOf(HalfDay half, int row);

  std::vector<std::size_t> starts;  // cells asked for in the rows before
  std::int64_t open[2] = {0, 0};
  std::vector<std::int64_t> changes[2];  // one more to a row than its cells
};

class SunTally {
 public:
  explicit SunTally(const Grid& grid);

  // A part of a day: `hours` for every cell, less what the shadows over its centre keep from it.
  void take(const std::vector<Shadow>& shadows, double hours, HalfDay half);
  [[nodiscard]] const SunCount& count();
  void clear();

 private:
  struct Step {
    double units;
    HalfDay half;
  };
  // Some steps' shadows are held, so that a row's changes are at hand for all of them at once.
  static constexpr std::size_t kMostHeld = 30'000;
  void darken(const Shadow& shadow);
  void dim(const Shadow& shadow, Density density);
  void holdDark();
  void hold(int row, Span span);
  void enterAll();
  void enterRow(std::span<const Span> spans, int row);

  SunCount count_;
  RowSpans finder_;
  RowLight light_;
  Densities densities_;
  DarkRows dark_;                         // at the step at hand
  int first_ = 0, end_ = 0;               // rows that may be dark
  std::vector<Step> steps_;               // held
  std::vector<std::vector<Span>> spans_;  // of them, by row
  std::size_t held_ = 0;                  // in all rows
};

}  // namespace tussock
