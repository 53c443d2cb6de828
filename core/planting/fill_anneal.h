// SPDX-License-Identifier: MIT
// Handing the drifts to the places of a layout so that the rules are kept best: simulated annealing
// (Kirkpatrick, Gelatt and Vecchi 1983) by swaps, from tall behind and low in front.
#pragma once

#include <functional>

#include "core/planting/fill_costs.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_watch.h"

namespace tussock {

struct AnnealRequest {
  double warmth = 2.0;  // cost that is still risked at first
  int steps = 20'000;   // swaps tried
  // Whether what grows at two spots may change places.
  std::function<bool(std::size_t, std::size_t)> mayTrade;
};

// Enough for each drift to find its place.
[[nodiscard]] int annealingSteps(std::size_t drifts);
// Shuffles `drifts`, the numbers of the drifts at the spots, and with them `kinds`. Spots from
// `fixed` on keep theirs.
void anneal(const FillCosts& costs, std::size_t fixed, const AnnealRequest& request, Chance& chance,
            std::vector<std::size_t>& drifts, Assignment& kinds, const WorkWatch& watch);

}  // namespace tussock
