// SPDX-License-Identifier: MIT
// A sun map as a table.
#pragma once

#include <string>

#include "core/exchange/sun_notes.h"
#include "core/sun/map.h"

namespace tussock {

// The notes, a line each that begins with "# "; then the header x_m,y_m,hours,before_noon,
// after_noon: cell centres in site coordinates, south to north and west to east, with mean hours of
// direct sun a day to three places, in all and on both sides of solar noon. Cells under buildings
// are left out.
[[nodiscard]] std::string sunMapToCsv(const SunMap& map, const std::vector<SunNote>& notes);

}  // namespace tussock
