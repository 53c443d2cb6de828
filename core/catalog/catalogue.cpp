// SPDX-License-Identifier: MIT
#include "core/catalog/catalogue.h"

#include <algorithm>
#include <utility>

#include "core/catalog/search.h"

namespace tussock {

namespace {

// In order of names, so that a name is found by halving.
std::vector<Species> inOrder(std::vector<Species> species) {
  std::stable_sort(species.begin(), species.end(), [](const Species& a, const Species& b) {
    return a.botanicalName < b.botanicalName;
  });
  return species;
}

std::vector<std::string> searchTextsOf(const std::vector<Species>& species) {
  std::vector<std::string> texts;
  texts.reserve(species.size());
  for (const Species& one : species) texts.push_back(searchTextOf(one));
  return texts;
}

}  // namespace

Catalogue::Catalogue() : Catalogue(std::vector<Species>{}) {}

Catalogue::Catalogue(std::vector<Species> species)
    : species_(std::make_shared<const std::vector<Species>>(inOrder(std::move(species)))),
      searchTexts_(std::make_shared<const std::vector<std::string>>(searchTextsOf(*species_))) {}

const Species* Catalogue::find(std::string_view botanicalName) const {
  const auto at = std::lower_bound(
      species_->begin(), species_->end(), botanicalName,
      [](const Species& s, std::string_view name) { return s.botanicalName < name; });
  return at != species_->end() && at->botanicalName == botanicalName ? &*at : nullptr;
}

std::vector<const Species*> Catalogue::search(std::string_view words) const {
  const std::vector<std::string> wanted = searchWords(words);
  std::vector<std::pair<int, const Species*>> found;
  for (std::size_t i = 0; i < species_->size(); ++i)
    if (const auto score = searchScore((*searchTexts_)[i], wanted))
      found.emplace_back(*score, &(*species_)[i]);
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<const Species*> result;
  result.reserve(found.size());
  for (const auto& [score, species] : found) result.push_back(species);
  return result;
}

}  // namespace tussock
