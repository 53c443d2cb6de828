// SPDX-License-Identifier: MIT
#include "core/exchange/plant_names.h"

#include <algorithm>

#include "core/catalog/search.h"

namespace tussock {

const Species* plantCalled(const std::string& name, const Catalogue& known) {
  const auto found = known.named(name);
  if (found.size() != 1) return nullptr;
  const auto words = searchWords(name);
  const auto is = [&](const std::string& one) { return searchWords(one) == words; };
  const Species& species = *found.front();
  return is(species.botanicalName) || std::ranges::any_of(species.synonyms, is) ? &species
                                                                                : nullptr;
}

// The genus says what the name says already; that of an older name is not the plant's.
void takeName(OwnSpecies& own, const std::string& name) {
  std::erase_if(own.facts, [&](const OwnFact& fact) {
    return fact.column == "genus" &&
           searchWords(fact.value) == searchWords(genusOf(own.botanicalName));
  });
  own.botanicalName = name;
}

}  // namespace tussock
