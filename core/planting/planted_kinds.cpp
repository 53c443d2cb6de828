// SPDX-License-Identifier: MIT
#include "core/planting/planted_kinds.h"

#include <algorithm>

namespace tussock {

PlantedKinds plantedKinds(const Yard& yard, const Catalogue& catalogue, Id<Bed> bed) {
  PlantedKinds planted;
  std::vector<const Species*> species;
  for (const Drift* drift : driftsIn(yard, bed)) {
    // A matrix is ground that drifts lie on, judged by none of what is asked of them.
    if (drift->layer != Layer::Main || drift->plants.empty() || drift->pattern == Pattern::Matrix)
      continue;
    const Species* known = catalogue.find(drift->species);
    if (known == nullptr) continue;
    const auto at = std::find(species.begin(), species.end(), known);
    planted.assignment.push_back(static_cast<std::size_t>(at - species.begin()));
    if (at == species.end()) species.push_back(known);
    planted.drifts.push_back(drift);
    planted.plants += static_cast<double>(drift->plants.size());
  }
  planted.kinds = kindsOf(species, yard.settings);
  return planted;
}

}  // namespace tussock
