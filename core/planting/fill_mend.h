// SPDX-License-Identifier: MIT
// The last touch to a fill: plants that still break a rule leave, drifts are brought back to odd
// counts and into one piece, and holes are planted in pairs.
#pragma once

#include "core/planting/fill_settle.h"

namespace tussock {

[[nodiscard]] DriftPlaces mended(Settling& settling, const std::vector<DriftToPlant>& drifts,
                                 ShareCaps caps, const FillGround& ground);

// Without `pairs` pairs of plants, where they stand most crowded; drifts keep three plants at
// least.
[[nodiscard]] DriftPlaces thinned(Settling& settling, const std::vector<DriftToPlant>& drifts,
                                  const ShareCaps& caps, int pairs);

}  // namespace tussock
