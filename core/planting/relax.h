// SPDX-License-Identifier: MIT
// Evens out a drift after it has grown: plants that stand close move apart a little into what room
// there is, and no rows are left. Every place stays free, at its least distances.
#pragma once

#include <vector>

#include "core/planting/ground.h"

namespace tussock {

[[nodiscard]] std::vector<Point> relaxed(const Ground& ground, Length spacing,
                                         std::vector<Point> places);

}  // namespace tussock
