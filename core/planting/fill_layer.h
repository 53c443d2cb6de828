// SPDX-License-Identifier: MIT
// Filling one layer of a bed with drifts of chosen species.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/planting/fill_ground.h"
#include "core/planting/fill_kinds.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_terms.h"
#include "core/planting/fill_watch.h"

namespace tussock {

struct LayerTask {
  const Yard& yard;  // without what is taken out: every plant in it stays
  const Catalogue& catalogue;
  const Bed& bed;
  FillSun sun;
  Layer layer = Layer::Main;
  std::vector<FillKind> kinds;
  double wildness = 0.5;
  double cover = 1.0;  // of the free ground
  StockSize size = StockSize::Plug;
  FillLimits limits;
  bool blunt = false;  // shorter drifts in a narrow bed: they leave less ground at their points
  bool rhythm = true;  // one species may come again in rhythm, see fill_rhythm.h
  std::optional<int> one = {};  // a single drift of the first kind, of so many plants at most
  // Called with the share that is done, 0 to 1, and the drifts as they have grown by then: rough,
  // and not yet by the rules.
  std::function<void(double, std::vector<KeptDrift>)> told = {};
};

struct LayerPlanting {
  std::vector<KeptDrift> drifts;
  std::string again = {};  // the species that comes again in rhythm; empty when none does
};
// Drifts that obey the placement rules; fewer, or none, when told to halt early.
[[nodiscard]] LayerPlanting fillLayer(const LayerTask& task, const FillGround& ground,
                                      Chance& chance, const WorkWatch& watch);

// The weeks of the growing season.
[[nodiscard]] WeekSet seasonOf(const Settings& settings);
[[nodiscard]] double meanSpacing(const std::vector<FillKind>& kinds);
[[nodiscard]] double leastSpacing(const std::vector<FillKind>& kinds);

}  // namespace tussock
