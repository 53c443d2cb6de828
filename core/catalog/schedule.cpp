// SPDX-License-Identifier: MIT
#include "core/catalog/schedule.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/catalog/plan_codes.h"

namespace tussock {

namespace {

ScheduleLine emptyLine(const Yard& yard, const Catalogue& catalogue, const Drift& drift) {
  ScheduleLine line;
  line.code = codeOf(yard, drift.species);
  line.botanicalName = drift.species;
  line.species = catalogue.find(drift.species);
  line.size = drift.size;
  line.closest = line.widest = drift.spacing;
  return line;
}

void count(ScheduleLine& line, const Drift& drift) {
  line.closest = std::min(line.closest, drift.spacing);
  line.widest = std::max(line.widest, drift.spacing);
  line.quantity += static_cast<int>(drift.plants.size());
  ++line.drifts;
}

}  // namespace

PlantSums sumsOf(const std::vector<ScheduleLine>& lines) {
  PlantSums sums;
  for (const ScheduleLine& line : lines) sums.add(line.size, line.quantity);
  return sums;
}

std::vector<ScheduleLine> scheduleOf(const Yard& yard, const Catalogue& catalogue,
                                     std::optional<Id<Bed>> bed) {
  std::map<std::pair<std::string, StockSize>, ScheduleLine> lines;
  for (const Drift& drift : yard.drifts) {
    if (drift.plants.empty() || (bed && drift.bed != *bed)) continue;
    const auto [at, isNew] = lines.try_emplace({drift.species, drift.size});
    if (isNew) at->second = emptyLine(yard, catalogue, drift);
    count(at->second, drift);
  }
  std::vector<ScheduleLine> result;
  result.reserve(lines.size());
  for (auto& [key, line] : lines) result.push_back(std::move(line));
  return result;
}

}  // namespace tussock
