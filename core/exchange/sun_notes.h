// SPDX-License-Identifier: MIT
// What a sun map was computed from, as short lines for a reader.
#pragma once

#include <string>
#include <vector>

#include "core/sun/map.h"

namespace tussock {

struct SunNote {
  std::string name, value;  // "Cell", "0.25 m"
};

// "20 June 2027", or the season's first and last day with the year, and whether it is a guess.
[[nodiscard]] std::string sunSpan(const Yard& yard, const SunMapRequest& request);
// Days, place, ground, skyline, cells, steps, trees and their leaf dates, and the source of the sun
// classes; figures in the yard's units. `years` is how many the trees of the yard have been grown
// by.
[[nodiscard]] std::vector<SunNote> sunNotes(const Yard& yard, const SunMapRequest& request,
                                            double years);

}  // namespace tussock
