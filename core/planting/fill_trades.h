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
  const std::vector<FillKind>& kinds;  // what may be planted
  const std::vector<Id<Drift>>& mine;  // drifts that may change
  const Yard& yard;                    // the planting that stays as it is until a trade is taken
  bool keepAll = false;                // no kind may lose its last drift
  // Asked before a drift is planted anew to be offered; false when that was done often enough.
  const std::function<bool()>& mayPlant;
};
// Takes the changed drifts or does not. The yard may have changed once a trade is taken.
using TakeTrade = std::function<bool(const std::vector<Drift>&)>;

// Each offers trades until one is taken; false when none was. From what costs least to what costs
// most: another species of the same spacing; a pair less; a trade with a drift of the same spacing;
// species that stand closer or wider, planted anew on the same ground.
bool offerOthers(const TradeRequest& request, const Drift& drift, const TakeTrade& take);
bool offerFewer(const TradeRequest& request, const Drift& drift, const TakeTrade& take);
bool offerPartners(const TradeRequest& request, const Drift& drift, const TakeTrade& take);
bool offerRegrown(const TradeRequest& request, const Drift& drift, const TakeTrade& take);

}  // namespace tussock
