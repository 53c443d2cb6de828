// SPDX-License-Identifier: MIT
#include "core/catalog/catalogue.h"

#include <algorithm>

namespace tussock {

namespace {

// In order of names, so that a name is found by halving.
std::vector<Species> inOrder(std::vector<Species> species) {
  std::stable_sort(species.begin(), species.end(), [](const Species& a, const Species& b) {
    return a.botanicalName < b.botanicalName;
  });
  return species;
}

}  // namespace

Catalogue::Catalogue() : Catalogue(std::vector<Species>{}) {}

Catalogue::Catalogue(std::vector<Species> species)
    : species_(std::make_shared<const std::vector<Species>>(inOrder(std::move(species)))) {}

const Species* Catalogue::find(std::string_view botanicalName) const {
  const auto at = std::lower_bound(
      species_->begin(), species_->end(), botanicalName,
      [](const Species& s, std::string_view name) { return s.botanicalName < name; });
  return at != species_->end() && at->botanicalName == botanicalName ? &*at : nullptr;
}

}  // namespace tussock
