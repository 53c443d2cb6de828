// SPDX-License-Identifier: MIT
// Planting a drift anew that stands already: its ground stays its own.
#pragma once

#include "core/planting/grow.h"

namespace tussock {

// What growDrift gives for the request where that comes to stand on the ground the drift has. Else,
// where the drift is in one piece, places spread evenly over that ground: as much of it as so many
// plants take, and where that is more than there is, beyond it evenly on all sides. Where its own
// ground takes fewer than a drift grown about the middle would have, that one; where neither has
// all, as in a bed that is full, the ground of a drift of the usual size is searched closely, its
// old places first (not for rows, nor for a group that becomes accents). By the placement rules
// always. `stood` is the drift as it is; the request, its `inPlaceOf`, says what it becomes.
[[nodiscard]] Growth setOut(const Yard& yard, const Drift& stood, const GrowRequest& request);

}  // namespace tussock
