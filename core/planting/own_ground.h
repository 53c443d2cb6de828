// SPDX-License-Identifier: MIT
// Places for a drift among those of plants that are to go, for beds with no room about them.
#pragma once

#include <vector>

#include "core/model/drift.h"
#include "core/planting/grow.h"

namespace tussock {

// Up to `request.count` places within half a spacing of the old ones, as keepCount leaves them: old
// places, and between them those on a grid of a twelfth of the spacing. They keep the placement
// rules, and are in one piece unless the pattern is of singles or a matrix. All in the plan's
// coordinates; the request's drop and axis are not asked.
[[nodiscard]] std::vector<Point> placesOnOwnGround(const Yard& yard, const GrowRequest& request,
                                                   const std::vector<Point>& old);

}  // namespace tussock
