// SPDX-License-Identifier: MIT
// A sun map as a table.
#pragma once

#include <string>

#include "core/sun/map.h"

namespace tussock {

// Header x_m,y_m,hours: cell centres in site coordinates, south to north and west to east, with
// mean hours of direct sun a day to three places. Cells under buildings are left out.
[[nodiscard]] std::string sunMapToCsv(const SunMap& map);

}  // namespace tussock
