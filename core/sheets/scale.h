// SPDX-License-Identifier: MIT
// Scales that drawings are made at, and the bar by which a print is checked.
#pragma once

#include <string>
#include <vector>

#include "core/units/measure_text.h"

namespace tussock {

// Largest first. Feet: architects' scales (12 / inches to the foot), engineers' (1 in to 10, 20,
// ... ft) and those between that both kinds of rule give: 1 in to 3, 5 and 6 ft, 0.3 in to 1 ft.
// Metres: ISO 5455, with 1:25, 1:40 and 1:75 which scale rules carry.
[[nodiscard]] const std::vector<int>& bedScales(UnitSystem units);   // down to 1:96 or 1:100
[[nodiscard]] const std::vector<int>& siteScales(UnitSystem units);  // to 1:20000, 1:24000

struct ScaleBar {
  double real = 0.0;  // feet or metres, as `units` says
  int parts = 0;      // equal divisions
  double millimetres = 0.0;
  std::string text;  // "Measure this bar: 5 ft at 1:24 is 2.50 in on paper"
};
// The longest round length that is at most `millimetres` on paper.
[[nodiscard]] ScaleBar scaleBar(double scale, UnitSystem units, double millimetres);

}  // namespace tussock
