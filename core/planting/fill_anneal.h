// SPDX-License-Identifier: MIT
// Handing the drifts to the places of a layout so that the rules are kept best: simulated annealing
// (Kirkpatrick, Gelatt and Vecchi 1983) by swaps, from tall behind and low in front.
#pragma once

#include "core/planting/fill_costs.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_watch.h"

namespace tussock {

struct AnnealRequest {
  double warmth = 2.0;    // cost that is still risked at first
  int steps = 20'000;     // swaps tried
  double likeness = 1e9;  // drifts swap when the ground they ask for differs by less, as a ratio
};

// Shuffles `drifts`, the numbers of the drifts at the spots, and with them `kinds`. Spots from
// `fixed` on keep theirs. `ground` in square metres that each drift asks for.
void anneal(const FillCosts& costs, std::size_t fixed, const std::vector<double>& ground,
            const AnnealRequest& request, Chance& chance, std::vector<std::size_t>& drifts,
            Assignment& kinds, const WorkWatch& watch);

}  // namespace tussock
