// SPDX-License-Identifier: MIT
#include "app/document/plant_facts.h"

#include <utility>

namespace tussock {

PlantFacts::PlantFacts(Catalogue published)
    : published_(std::move(published)), given_{published_} {}

void PlantFacts::setPersonal(std::vector<OwnSpecies> personal, std::vector<Species> read) {
  if (personal == personal_) return;
  personal_ = std::move(personal);
  personalRead_ = std::move(read);
  personalIsNew_ = true;
}

bool PlantFacts::follow(const Yard& yard) {
  std::vector<OwnSpecies> own(yard.ownSpecies.begin(), yard.ownSpecies.end());
  const Hemisphere where = hemisphereOf(yard.settings);
  if (own == yardsOwn_ && !personalIsNew_ && where == catalogue().hemisphere()) return false;
  yardsOwn_ = std::move(own);
  personalIsNew_ = false;
  MergedPlants merged = mergePlants(layers(yard), std::exchange(personalRead_, {}));
  faults_ = std::move(merged.errors);
  given_.push_back(std::move(merged.catalogue));
  return true;
}

}  // namespace tussock
