// SPDX-License-Identifier: MIT
// Changing the number of plants of a drift that stands already.
#pragma once

#include <vector>

#include "core/planting/grow.h"

namespace tussock {

// `standing` and more beside them until there are `request.count`, or the largest odd number that
// fits: see CountAs. The standing ones keep their places, fit or not; set `request.inPlaceOf`.
[[nodiscard]] std::vector<Point> enlarged(const Yard& yard, const GrowRequest& request,
                                          std::vector<Point> standing);
// The positions in `standing` of the `count` plants to keep: nearest the middle in the drift's
// stretched distance, in one piece if they were.
[[nodiscard]] std::vector<std::size_t> shrunk(const GrowRequest& request,
                                              const std::vector<Point>& standing);

// So many of a kept drift's places, of those the ones nearest its middle as above.
[[nodiscard]] std::vector<Point> fewerPlaces(const KeptDrift& drift, int count);

}  // namespace tussock
