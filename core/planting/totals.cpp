// SPDX-License-Identifier: MIT
#include "core/planting/totals.h"

#include <set>
#include <string_view>

#include "core/catalog/bloom.h"
#include "core/planting/slope.h"

namespace tussock {

namespace {

void count(const std::vector<const Drift*>& drifts, Totals& totals,
           std::set<std::string_view>& species) {
  for (const Drift* drift : drifts) {
    if (drift->plants.empty()) continue;
    ++totals.drifts;
    const int plants = static_cast<int>(drift->plants.size());
    totals.plants += plants;
    if (drift->existing()) totals.existing += plants;
    if (drift->layer == Layer::Main) totals.taken += groundOf(*drift);
    species.insert(drift->species);
  }
  totals.species = static_cast<int>(species.size());
}

}  // namespace

Area surfaceOf(const Yard& yard, const Bed& bed) {
  return areaOf(bed.outline) * Slope(yard.settings).stretch();
}

Totals totalsOf(const Yard& yard) {
  Totals totals;
  std::set<std::string_view> species;
  for (const Bed& bed : yard.beds) {
    totals.ground += surfaceOf(yard, bed);
    count(driftsIn(yard, bed.id), totals, species);
  }
  return totals;
}

Totals totalsOf(const Yard& yard, const Bed& bed) {
  Totals totals;
  std::set<std::string_view> species;
  totals.ground = surfaceOf(yard, bed);
  count(driftsIn(yard, bed.id), totals, species);
  return totals;
}

std::optional<SunHours> sunOn(const Drift& drift, const SunMap& map) {
  SunHours sum;
  double counted = 0.0;
  for (const Plant& plant : drift.plants) {
    const auto hours = map.hoursAt(plant.at);
    if (!hours) continue;
    sum.beforeNoon += hours->beforeNoon;
    sum.afterNoon += hours->afterNoon;
    counted += 1.0;
  }
  if (counted == 0.0) return std::nullopt;
  return SunHours{sum.beforeNoon / counted, sum.afterNoon / counted};
}

}  // namespace tussock
