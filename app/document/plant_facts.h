// SPDX-License-Identifier: MIT
// The plant facts that hold for the open yard: the user's own before the published ones, with weeks
// as they are in its half of the earth.
#pragma once

#include <deque>
#include <vector>

#include "core/catalog/own_plants.h"

namespace tussock {

class PlantFacts {
 public:
  explicit PlantFacts(Catalogue published);

  // `read` has each of them over the published one, in their order; without it they are read anew.
  void setPersonal(std::vector<OwnSpecies> personal, std::vector<Species> read = {});
  // True when the facts are others than before. Nothing is worked out where the yard's own plants
  // are as they were and it has not moved over the equator.
  bool follow(const Yard& yard);

  [[nodiscard]] const Catalogue& catalogue() const { return given_.back(); }
  // What stands against own plants that cannot be used; the published ones stand in their place.
  [[nodiscard]] const std::vector<CatalogueError>& faults() const { return faults_; }
  [[nodiscard]] PlantLayers layers(const Yard& yard) const { return {published_, personal_, yard}; }

 private:
  Catalogue published_;
  std::vector<OwnSpecies> personal_;
  std::vector<Species> personalRead_;  // one each until they are merged: they take much room
  std::vector<OwnSpecies> yardsOwn_;
  bool personalIsNew_ = false;  // since it was last worked out
  std::vector<CatalogueError> faults_;
  // All that were ever given out: others hold pointers into them.
  std::deque<Catalogue> given_;
};

}  // namespace tussock
