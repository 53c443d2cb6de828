// SPDX-License-Identifier: MIT
#include "core/checks/suggestions.h"

#include <algorithm>
#include <bit>
#include <set>

namespace tussock {

namespace {

Place placeOf(const Bed* bed, const Yard& yard, const SunMap* sun) {
  Place place;
  place.state = yard.settings.state;
  place.hardinessZone = yard.settings.hardinessZone;
  if (bed == nullptr) return place;
  place.moisture = bed->moisture;
  if (sun != nullptr && !sun->empty()) place.sunHours = sun->meanHours(bed->outline);
  return place;
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
  const Place place = placeOf(bed, yard, sun);
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
