// SPDX-License-Identifier: MIT
// After planting: drifts about which something is found are changed, in a large bed section by
// section.
#pragma once

#include <functional>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/planting/fill_exchange.h"
#include "core/planting/fill_terms.h"
#include "core/sun/map.h"

namespace tussock {

// Above so many drifts a bed is looked at in sections first.
inline constexpr std::size_t kManyDrifts = 96;

struct ImproveTask {
  const Catalogue& catalogue;
  const SunMap* sun;
  Id<Bed> bed;
  double wildness;
  const FillLimits& limits;
  const std::vector<FillKind>& kinds;  // what may be planted
  const FillJudge& judge;              // of the whole bed
  const FillJudge& judgeOfSection;     // of what is seen near a drift
  bool keepAll = false;                // as in ExchangeTask
  double spareGround = 0.0;            // square metres that may fall bare
  unsigned seed = 0;
  int mostDetours = 0;                    // as in ExchangeTask
  std::function<void(double)> told = {};  // called with the share of the work that is done
};

// Changes the yard's drifts `mine`, in one bed.
PlantingWorth improvePlanting(const ImproveTask& task, const std::vector<Id<Drift>>& mine,
                              Yard& planted, const WorkWatch& watch);

}  // namespace tussock
