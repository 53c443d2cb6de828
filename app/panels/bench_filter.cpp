// SPDX-License-Identifier: MIT
#include "app/panels/bench_filter.h"

#include <algorithm>

#include "core/catalog/search.h"

namespace tussock {

namespace {

template <class E>
bool anyChosen(const std::set<E>& chosen, const std::vector<E>& classes) {
  return chosen.empty() ||
         std::any_of(classes.begin(), classes.end(), [&](E one) { return chosen.contains(one); });
}

std::vector<const Species*> inOrderOfFit(const Catalogue& facts, const RankRequest& place) {
  std::vector<const Species*> suiting;
  for (const Ranked& one : rankFor(facts, place))
    if (one.suits()) suiting.push_back(one.species);
  return suiting;
}

bool inChosenClasses(const Species& species, const BenchFilter& filter) {
  return anyChosen(filter.sun, species.sun) && anyChosen(filter.moisture, species.moisture) &&
         (filter.habits.empty() || filter.habits.contains(species.habit));
}

bool fits(const Species& species, const RankRequest& place) {
  return whyNot(species, place.place, place.profile).empty();
}

}  // namespace

std::vector<const Species*> shownSpecies(const Catalogue& facts, const BenchFilter& filter) {
  const bool typed = !searchWords(filter.words).empty();
  std::vector<const Species*> shown =
      filter.fits && !typed ? inOrderOfFit(facts, *filter.fits) : facts.search(filter.words);
  std::erase_if(shown, [&](const Species* species) {
    return !inChosenClasses(*species, filter) || (filter.fits && !fits(*species, *filter.fits));
  });
  return shown;
}

std::vector<Ranked> leftOut(const Catalogue& facts, const BenchFilter& filter, std::size_t count) {
  std::vector<Ranked> left;
  if (!filter.fits) return left;
  for (const Species* species : facts.search(filter.words)) {
    if (left.size() == count) break;
    if (!inChosenClasses(*species, filter) || fits(*species, *filter.fits)) continue;
    left.push_back({species, 0.0, {}, whyNot(*species, filter.fits->place, filter.fits->profile)});
  }
  return left;
}

}  // namespace tussock
