// SPDX-License-Identifier: MIT
// Planting one species anew: each of its drifts on the ground that it had, as many plants as it
// had.
#pragma once

#include <vector>

#include "core/planting/fill_layer.h"

namespace tussock {

// Drifts of the task's first kind in the place of those that were taken out: no plant stands
// farther than one and a half spacings from where one stood, and there are as many as there were,
// the next lower odd number if that was even, fewer where the ground has become less. `ground` is
// that of the whole bed without them; `takenOut` has its places as the task's yard has, which must
// not hold them any more.
[[nodiscard]] std::vector<KeptDrift> refilled(const LayerTask& task, const FillGround& ground,
                                              const std::vector<Drift>& takenOut, Chance& chance,
                                              const WorkWatch& watch);

// The largest odd count that is no more than what the drifts had, in all.
[[nodiscard]] int countToRefill(const std::vector<Drift>& takenOut);

}  // namespace tussock
