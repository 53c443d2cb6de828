// SPDX-License-Identifier: MIT
// One mean out of a map that tells of several months, as a map of its own.
#pragma once

#include "core/sun/map.h"

namespace tussock {

enum class SunSpan { Season, Month, WorstMonth };

// Hours of that month; an empty map when it is not among the map's months.
[[nodiscard]] SunMap monthMapOf(const SunMap& map, std::chrono::month month);
// Of each cell the month with the fewest hours; an empty map when it tells of no months.
[[nodiscard]] SunMap worstMonthMapOf(const SunMap& map);

}  // namespace tussock
