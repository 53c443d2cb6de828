// SPDX-License-Identifier: MIT
#include "core/planting/planted_list.h"

#include <algorithm>

namespace tussock {

namespace {

const ListedSpecies* entryFor(const std::string& species, const std::vector<ListedSpecies>& list) {
  const auto found = std::find_if(list.begin(), list.end(), [&](const ListedSpecies& entry) {
    return entry.species == species;
  });
  return found == list.end() ? nullptr : &*found;
}

}  // namespace

std::vector<ListedSpecies> plantedList(const Yard& yard, Id<Bed> bed,
                                       const std::function<bool(const Drift&)>& counts,
                                       const std::vector<ListedSpecies>& list) {
  std::vector<ListedSpecies> result;
  for (const Drift* drift : driftsIn(yard, bed)) {
    if (!counts(*drift) || entryFor(drift->species, result) != nullptr) continue;
    const ListedSpecies* listed = entryFor(drift->species, list);
    result.push_back(listed != nullptr
                         ? *listed
                         : ListedSpecies{drift->species, 0.0, drift->pattern == Pattern::Matrix});
  }
  return result;
}

}  // namespace tussock
