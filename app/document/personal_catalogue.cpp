// SPDX-License-Identifier: MIT
#include "app/document/personal_catalogue.h"

#include <algorithm>
#include <stdexcept>

#include "app/document/personal_plants.h"

namespace tussock {

std::vector<CatalogueError> PersonalCatalogue::load() {
  OwnPlantsReading read = readPersonalPlants(document_.plantLayers().published);
  plants_ = std::move(read.plants);
  document_.setPersonalPlants(plants_);
  return read.errors;
}

void PersonalCatalogue::make(const PersonalEdit& edit) {
  write(withEdit(plants_, edit), historyWithNow());
}

void PersonalCatalogue::take(const std::vector<OwnSpecies>& more) {
  std::vector<OwnSpecies> after = plants_;
  for (const OwnSpecies& own : more) {
    std::erase_if(after,
                  [&](const OwnSpecies& old) { return old.botanicalName == own.botanicalName; });
    after = withEdit(std::move(after), {std::nullopt, own});
  }
  write(after, historyWithNow());
}

void PersonalCatalogue::undo() {
  if (before_.empty()) return;
  History earlier = before_;
  earlier.pop_back();
  write(before_.back(), std::move(earlier));
}

PersonalCatalogue::History PersonalCatalogue::historyWithNow() const {
  History history = before_;
  history.push_back(plants_);
  return history;
}

void PersonalCatalogue::write(const std::vector<OwnSpecies>& plants, History history) {
  const Catalogue& published = document_.plantLayers().published;
  if (readPersonalPlants(published).plants != plants_) {
    before_.clear();
    load();
    throw std::runtime_error(tr("Your plants were changed elsewhere and are shown as they are now. "
                                "Make the change again "
                                "if it is still wanted.")
                                 .toStdString());
  }
  savePersonalPlants(plants, published);
  before_ = std::move(history);
  load();  // as the file has it: what is published already is not kept
}

}  // namespace tussock
