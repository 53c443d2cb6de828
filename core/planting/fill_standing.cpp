// SPDX-License-Identifier: MIT
#include "core/planting/fill_standing.h"

#include <algorithm>

namespace tussock {

StandingPlants standingIn(const Yard& yard, const Catalogue& catalogue,
                          const std::vector<FillKind>& kinds) {
  StandingPlants standing;
  std::size_t groups = kinds.size();  // some numbers may be left out, so there may be higher ones
  for (const FillKind& kind : kinds) groups = std::max({groups, kind.genus + 1, kind.family + 1});
  standing.ofKind.assign(kinds.size(), 0.0);
  standing.ofGenus.assign(groups, 0.0);
  standing.ofFamily.assign(groups, 0.0);
  for (const Drift& drift : yard.drifts) {
    if (drift.layer != Layer::Main) continue;
    const double count = static_cast<double>(drift.plants.size());
    standing.all += count;
    const Species* species = catalogue.find(drift.species);
    if (species == nullptr) continue;
    const auto add = [&](std::vector<double>& sums, auto same, auto group) {
      for (const FillKind& kind : kinds)
        if (same(kind)) {
          sums[group(kind)] += count;
          return;
        }
    };
    add(
        standing.ofKind, [&](const FillKind& k) { return k.species == species; },
        [&](const FillKind& k) { return static_cast<std::size_t>(&k - kinds.data()); });
    add(
        standing.ofGenus, [&](const FillKind& k) { return k.species->genus == species->genus; },
        [](const FillKind& k) { return k.genus; });
    add(
        standing.ofFamily, [&](const FillKind& k) { return k.species->family == species->family; },
        [](const FillKind& k) { return k.family; });
  }
  return standing;
}

}  // namespace tussock
