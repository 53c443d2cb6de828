// SPDX-License-Identifier: MIT
#include "core/catalog/choose.h"

#include <map>

#include "core/catalog/search.h"

namespace tussock {

namespace {

bool isTyped(const Choice& choice) {
  return !searchWords(choice.filter.words).empty();
}

// Without a place nothing is held against a species.
std::vector<Ranked> unranked(const Catalogue& catalogue) {
  std::vector<Ranked> all;
  for (const Species& species : catalogue.species()) all.emplace_back().species = &species;
  return all;
}

// The order in which the words find them.
void sortAsFound(std::vector<Ranked>& ranked, const Catalogue& catalogue,
                 const std::string& words) {
  std::map<const Species*, std::size_t> places;
  for (const Species* species : catalogue.search(words)) places.emplace(species, places.size());
  std::stable_sort(ranked.begin(), ranked.end(), [&](const Ranked& a, const Ranked& b) {
    return places.at(a.species) < places.at(b.species);
  });
}

}  // namespace

std::vector<Ranked> choose(const Catalogue& catalogue, const Choice& choice) {
  std::vector<Ranked> all = choice.place ? rankFor(catalogue, *choice.place) : unranked(catalogue);
  all = filtered(std::move(all), catalogue, choice.filter);
  if (choice.place && choice.of != ChoiceOf::All)
    std::erase_if(
        all, [&](const Ranked& one) { return one.suits() != (choice.of == ChoiceOf::Suiting); });
  if (!choice.place && choice.of == ChoiceOf::LeftOut) all.clear();
  if (choice.order)
    sortBy(all, *choice.order, catalogue.hemisphere());
  else if (isTyped(choice))
    sortAsFound(all, catalogue, choice.filter.words);
  if (!choice.order && choice.place && choice.of == ChoiceOf::Suiting)
    sortBy(all, RankOrder::Fit, catalogue.hemisphere());
  return all;
}

}  // namespace tussock
