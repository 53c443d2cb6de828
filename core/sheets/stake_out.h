// SPDX-License-Identifier: MIT
// The baseline A-B along the front of a bed, from which its plants are set out: distances along it
// and square off it, ticked every foot or half metre.
#pragma once

#include <string>
#include <vector>

#include "core/sheets/labelling.h"
#include "core/sheets/sheet.h"
#include "core/units/measure_text.h"

namespace tussock {

struct Baseline {
  Point a, b;          // in the turned frame of the sheet, metres
  double reach = 0;    // metres that offsets go up to
  Length offset;       // of line and A outside of all that is drawn
  Length front, left;  // of line and A outside the bed itself
  UnitSystem units = UnitSystem::FeetInches;

  [[nodiscard]] std::string text() const;

 private:
  [[nodiscard]] std::string outside(Length distance) const;
};
// Around the box of the bed and its plants, which may stand outside of it; both boxes in the turned
// frame.
[[nodiscard]] Baseline baselineFor(const Box& turned, const Box& bed, int scale, UnitSystem units);
// The bands of the drawing's window that its rulers take.
[[nodiscard]] RulerBand rulersOn(const Sheet& sheet, const Baseline& baseline);
// Figures stand beside their ticks where leaders pass, or are left out; A and B never are.
void addBaseline(Sheet& sheet, const Baseline& baseline);

}  // namespace tussock
