// SPDX-License-Identifier: MIT
#include "core/checks/suggestions.h"

#include "core/catalog/bed_request.h"
#include "core/catalog/missing.h"
#include "core/catalog/week_range.h"

namespace tussock {

namespace {

// Null where several beds are planted, or none.
const Bed* onlyPlantedBed(const Yard& yard) {
  const Bed* only = nullptr;
  for (const Drift& drift : yard.drifts) {
    const Bed* bed = yard.beds.find(drift.bed);
    if (only != nullptr && bed != only) return nullptr;
    only = bed;
  }
  return only;
}

RankRequest requestIn(const Bed* bed, const Yard& yard, const Catalogue& facts, const SunMap* sun) {
  if (bed == nullptr) return requestFor(yard, facts);
  const bool known = sun != nullptr && !sun->empty();
  return requestFor(yard, facts, *bed, known ? sun->meanHours(bed->outline) : std::nullopt);
}

}  // namespace

std::vector<const Species*> speciesToFill(WeekRange gap, const Bed* bed, const Yard& yard,
                                          const Catalogue& facts, const SunMap* sun,
                                          std::size_t count) {
  const RankRequest request =
      requestIn(bed != nullptr ? bed : onlyPlantedBed(yard), yard, facts, sun);
  std::vector<const Species*> flowering;  // the rest is not worth ranking
  for (const Species& species : facts.species())
    if (showsFlowers(species) && (weeksInFlower(species) & weeksOf(gap)) != 0)
      flowering.push_back(&species);
  std::vector<const Species*> result;
  for (const Ranked& one :
       bestToFill({Lack::Flowers, gap, {}}, rankAmong(flowering, request), request.planted, count))
    result.push_back(one.species);
  return result;
}

}  // namespace tussock
