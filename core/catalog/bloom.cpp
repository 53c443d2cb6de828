// SPDX-License-Identifier: MIT
#include "core/catalog/bloom.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/geometry/lattice.h"

namespace tussock {

namespace {

// Ordered by name, so that equal areas come in the same order each time.
using Grounds = std::map<std::string_view, BloomSpan>;

std::vector<BloomSpan> flowering(const Yard& yard, const Catalogue& catalogue,
                                 std::optional<Id<Bed>> bed) {
  Grounds grounds;
  for (const Drift& drift : yard.drifts) {
    if (bed && drift.bed != *bed) continue;
    const Species* species = catalogue.find(drift.species);
    if (species == nullptr || !showsFlowers(*species) || drift.plants.empty()) continue;
    BloomSpan& span = grounds[species->botanicalName];
    span.species = species;
    span.ground += groundOf(drift);
  }
  std::vector<BloomSpan> spans;
  for (const auto& [name, span] : grounds) spans.push_back(span);
  std::stable_sort(spans.begin(), spans.end(),
                   [](const BloomSpan& a, const BloomSpan& b) { return a.ground > b.ground; });
  return spans;
}

}  // namespace

bool showsFlowers(const Species& species) {
  return species.habit != Habit::Grass && species.habit != Habit::Sedge &&
         species.bloomWeeks().has_value();
}

WeekSet weeksInFlower(const Species& species) {
  const auto weeks = species.bloomWeeks();
  return weeks ? weeksOf(*weeks) : WeekSet{0};
}

Area groundPerPlant(Pattern pattern, Length spacing) {
  return pattern == Pattern::Square ? spacing * spacing : triangularGround(spacing);
}

Area groundOf(const Drift& drift) {
  return groundPerPlant(drift.pattern, drift.spacing) * static_cast<double>(drift.plants.size());
}

BloomByWeek bloomByWeek(const Yard& yard, const Catalogue& catalogue, std::optional<Id<Bed>> bed) {
  BloomByWeek weeks;
  for (const BloomSpan& span : flowering(yard, catalogue, bed)) {
    const WeekSet set = weeksInFlower(*span.species);
    for (std::size_t week = 0; week < weeks.size(); ++week)
      if ((set >> week & 1U) != 0) weeks[week].push_back(span);
  }
  return weeks;
}

}  // namespace tussock
