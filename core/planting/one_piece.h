// SPDX-License-Identifier: MIT
// Whether plants make one drift: each reachable from each over gaps under kTouch spacings.
#pragma once

#include <vector>

#include "core/planting/grow.h"

namespace tussock {

[[nodiscard]] bool inOnePiece(const std::vector<Point>& places, Length spacing);
// The most of them that do; the first such where there are several.
[[nodiscard]] std::vector<Point> largestPiece(const std::vector<Point>& places, Length spacing);

// The numbers of those that do not, ascending.
[[nodiscard]] std::vector<std::size_t> apartFromMost(const std::vector<Point>& places,
                                                     Length spacing);

}  // namespace tussock
