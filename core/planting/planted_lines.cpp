// SPDX-License-Identifier: MIT
#include "core/planting/planted_lines.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace tussock {

std::vector<PlantedLine> plantedLines(const Yard& after, const Catalogue& catalogue,
                                      const FillRequest& request, const FillResult& result) {
  std::set<Id<Drift>> fresh;
  for (const Change& change : result.edit.changes)
    if (const auto* drift = change.after ? std::get_if<Drift>(&*change.after) : nullptr)
      fresh.insert(drift->id);
  std::vector<PlantedLine> lines;
  for (const Drift* drift : driftsIn(after, request.bed)) {
    if (!takesOut(request, *drift) && !fresh.contains(drift->id)) continue;
    auto at = std::find_if(lines.begin(), lines.end(), [&](const PlantedLine& line) {
      return line.layer == drift->layer && line.botanicalName == drift->species;
    });
    if (at == lines.end()) {
      const Species* known = catalogue.find(drift->species);
      at = lines.insert(
          at, {drift->layer, drift->species, known != nullptr ? known->commonName : std::string()});
    }
    at->plants += drift->plants.size(), ++at->drifts;
  }
  std::sort(lines.begin(), lines.end(), [](const PlantedLine& a, const PlantedLine& b) {
    return std::tie(a.layer, b.plants, a.botanicalName) <
           std::tie(b.layer, a.plants, b.botanicalName);
  });
  return lines;
}

}  // namespace tussock
