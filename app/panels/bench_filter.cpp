// SPDX-License-Identifier: MIT
#include "app/panels/bench_filter.h"

#include <algorithm>

namespace tussock {

namespace {

template <class E>
bool anyChosen(const std::set<E>& chosen, const std::vector<E>& classes) {
  return chosen.empty() ||
         std::any_of(classes.begin(), classes.end(), [&](E one) { return chosen.contains(one); });
}

std::vector<const Species*> found(const Catalogue& facts, const std::string& words) {
  if (words.find_first_not_of(' ') != std::string::npos) return facts.search(words);
  std::vector<const Species*> all;
  for (const Species& species : facts.species()) all.push_back(&species);
  return all;
}

}  // namespace

std::vector<const Species*> shownSpecies(const Catalogue& facts, const BenchFilter& filter) {
  const SunProfile& profile = sunProfile(filter.sunProfile);
  std::vector<const Species*> shown = found(facts, filter.words);
  std::erase_if(shown, [&](const Species* species) {
    return !anyChosen(filter.sun, species->sun) || !anyChosen(filter.moisture, species->moisture) ||
           !(filter.habits.empty() || filter.habits.contains(species->habit)) ||
           (filter.fits && !whyNot(*species, *filter.fits, profile).empty());
  });
  return shown;
}

}  // namespace tussock
