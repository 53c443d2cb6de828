// SPDX-License-Identifier: MIT
// What a drift about which something is found may be changed for: another species, a trade with
// another drift, or a pair less.
#pragma once

#include <functional>
#include <vector>

#include "core/model/yard.h"
#include "core/planting/fill_kinds.h"

namespace tussock {

struct TradeRequest {
  const std::vector<FillKind>& kinds;   // what may be planted
  const std::vector<Id<Drift>>& mine;   // drifts that may change
  const Yard& yard;                     // the planting that stays as it is until a trade is taken
  bool keepAll = false;                 // no kind may lose its last drift
  const std::function<bool()>& enough;  // no more trades are to be made up
};
// Takes the changed drifts or does not. The yard may have changed once a trade is taken.
using TakeTrade = std::function<bool(const std::vector<Drift>&)>;

// Offers trades until one is taken; false when none was. The first moves no plant but takes a pair
// at most; the second plants species that stand closer or wider on the same ground, and so costs
// much more.
bool offerAlike(const TradeRequest& request, const Drift& drift, const TakeTrade& take);
bool offerRegrown(const TradeRequest& request, const Drift& drift, const TakeTrade& take);

}  // namespace tussock
