// SPDX-License-Identifier: MIT
#include "core/checks/suggestions.h"

#include <algorithm>
#include <bit>
#include <set>

#include "core/catalog/place.h"

namespace tussock {

namespace {

Place placeFor(const Bed* bed, const Yard& yard, const SunMap* sun) {
  if (bed == nullptr) return placeOf(yard);
  const bool known = sun != nullptr && !sun->empty();
  return placeOf(yard, *bed, known ? sun->meanHours(bed->outline) : std::nullopt);
}

std::set<std::string> growingIn(const Bed* bed, const Yard& yard) {
  std::set<std::string> names;
  for (const Drift& drift : yard.drifts)
    if (bed == nullptr || drift.bed == bed->id) names.insert(drift.species);
  return names;
}

}  // namespace

std::vector<const Species*> speciesToFill(WeekSet weeks, const Bed* bed, const Yard& yard,
                                          const Catalogue& facts, const SunMap* sun,
                                          std::size_t count) {
  const Place place = placeFor(bed, yard, sun);
  const SunProfile& profile = sunProfile(yard.settings.sunProfile);
  const std::set<std::string> growing = growingIn(bed, yard);
  std::vector<std::pair<int, const Species*>> found;
  for (const Species& species : facts.species()) {
    if (!showsFlowers(species) || growing.contains(species.botanicalName)) continue;
    const int filled = std::popcount(weeksInFlower(species) & weeks);
    if (filled > 0 && whyNot(species, place, profile).empty()) found.emplace_back(filled, &species);
  }
  std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
    if (a.first != b.first) return a.first > b.first;
    return a.second->botanicalName < b.second->botanicalName;
  });
  std::vector<const Species*> result;
  for (std::size_t i = 0; i < std::min(count, found.size()); ++i) result.push_back(found[i].second);
  return result;
}

}  // namespace tussock
