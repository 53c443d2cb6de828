// SPDX-License-Identifier: MIT
// What grows in a bed, as a fill and its score see it.
#pragma once

#include <vector>

#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/planting/fill_costs.h"

namespace tussock {

// The main drifts of a bed whose species are known, with their kinds.
struct PlantedKinds {
  std::vector<const Drift*> drifts;
  std::vector<FillKind> kinds;
  Assignment assignment;  // the kind of each drift
  double plants = 0.0;
};
[[nodiscard]] PlantedKinds plantedKinds(const Yard& yard, const Catalogue& catalogue, Id<Bed> bed);

}  // namespace tussock
