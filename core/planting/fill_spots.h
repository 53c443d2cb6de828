// SPDX-License-Identifier: MIT
// The layout of shared ground, together with the drifts that stay in the bed.
#pragma once

#include <vector>

#include "core/planting/fill_cells.h"
#include "core/planting/fill_layout.h"

namespace tussock {

struct SpotsRequest {
  const Yard& yard;
  const Bed& bed;
  FillSun sun;
  const SightLimits& sight;
  std::vector<const Drift*> kept;  // main drifts that stay; they come after the shared ones
};

[[nodiscard]] Layout layoutOf(const SpotsRequest& request, const FillGround& ground,
                              const Owners& owners, std::size_t drifts);
// The layout of drifts as they stand; `request.kept` are its spots.
[[nodiscard]] Layout layoutOf(const SpotsRequest& request);

// Pairs of drifts that touch: some plant of one nearer than kTouch mean spacings to one of the
// other.
// Whose cells lie side by side over some length.
[[nodiscard]] TouchingPairs touchingCells(const FillGround& ground, const Owners& owners);
[[nodiscard]] TouchingPairs touchingDrifts(const std::vector<const Drift*>& drifts);

}  // namespace tussock
