// SPDX-License-Identifier: MIT
// The last touch to a fill: plants that still break a rule leave, drifts are brought back to odd
// counts and into one piece, and holes are planted in pairs. What takes long is left when told to
// halt; the rules hold all the same.
#pragma once

#include "core/planting/fill_settle.h"
#include "core/planting/fill_watch.h"

namespace tussock {

[[nodiscard]] DriftPlaces mended(Settling& settling, const std::vector<DriftToPlant>& drifts,
                                 ShareCaps caps, const FillGround& ground, const WorkWatch& watch);

// Without `pairs` pairs of plants, where they stand most crowded; drifts keep three plants at
// least.
[[nodiscard]] DriftPlaces thinned(Settling& settling, const std::vector<DriftToPlant>& drifts,
                                  const ShareCaps& caps, int pairs, const WorkWatch& watch);

}  // namespace tussock
