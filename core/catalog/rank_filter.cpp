// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/catalog/rank.h"
#include "core/catalog/season_weeks.h"

namespace tussock {

namespace {

template <class T>
bool oneOf(const std::set<T>& chosen, const T& value) {
  return chosen.empty() || chosen.contains(value);
}

template <class T>
bool anyOf(const std::set<T>& chosen, const std::vector<T>& values) {
  return chosen.empty() || std::any_of(values.begin(), values.end(),
                                       [&](const T& value) { return chosen.contains(value); });
}

bool hasTrait(const Ranked& ranked, Trait trait) {
  const Species& species = *ranked.species;
  switch (trait) {
    case Trait::Suits:
      return ranked.suits();
    case Trait::DeerResistant:
      return species.deerResistant == Answer::Yes;
    case Trait::RabbitResistant:
      return species.rabbitResistant == Answer::Yes;
    case Trait::HostPlant:
      return !species.hostNote.empty();
    case Trait::Nectar:
      return !species.nectarNote.empty();
    case Trait::Evergreen:
      return species.winterLeaf == WinterLeaf::Evergreen;
    case Trait::SeeThrough:
      return species.body == Body::SeeThrough;
  }
  return false;
}

bool isSized(const Species& species, const PlantFilter& filter) {
  return (!filter.lowest || species.heightHigh >= *filter.lowest) &&
         (!filter.highest || species.heightHigh <= *filter.highest);
}

bool isIn(const Species& species, const std::string& state) {
  const auto& states = species.nativeStates;
  return state.empty() || std::find(states.begin(), states.end(), state) != states.end();
}

// By month: a week that begins in August and ends in September would let August through.
bool isInFlower(const Species& species, const std::set<int>& months) {
  return months.empty() || std::any_of(months.begin(), months.end(),
                                       [&](int month) { return species.bloomsInMonth(month); });
}

bool passes(const Ranked& ranked, const PlantFilter& filter) {
  const Species& species = *ranked.species;
  return anyOf(filter.sun, species.sun) && anyOf(filter.moisture, species.moisture) &&
         oneOf(filter.habits, species.habit) && oneOf(filter.layers, species.usualLayer()) &&
         oneOf(filter.colours, species.flowerColourWord) &&
         oneOf(filter.families, species.family) && isSized(species, filter) &&
         isIn(species, filter.state) && isInFlower(species, filter.months) &&
         std::all_of(filter.traits.begin(), filter.traits.end(),
                     [&](Trait trait) { return hasTrait(ranked, trait); });
}

template <class KeyOf>
void sortByKey(std::vector<Ranked>& ranked, KeyOf keyOf) {
  std::stable_sort(ranked.begin(), ranked.end(), [&](const Ranked& a, const Ranked& b) {
    return keyOf(*a.species) < keyOf(*b.species);
  });
}

void sortByFit(std::vector<Ranked>& ranked) {
  std::stable_sort(ranked.begin(), ranked.end(), isBetter);
}

}  // namespace

std::set<std::string> coloursToChoose(const Catalogue& catalogue) {
  std::set<std::string> colours;
  for (const Species& species : catalogue.species()) colours.insert(species.flowerColourWord);
  colours.erase("");
  colours.erase("none");  // as the table has it of ferns
  return colours;
}

std::vector<Ranked> filtered(std::vector<Ranked> all, const Catalogue& catalogue,
                             const PlantFilter& filter) {
  const auto named = catalogue.search(filter.words);
  const std::set<const Species*> found(named.begin(), named.end());
  std::erase_if(all, [&](const Ranked& ranked) {
    return !found.contains(ranked.species) || !passes(ranked, filter);
  });
  return all;
}

void sortBy(std::vector<Ranked>& ranked, RankOrder order, Hemisphere where) {
  switch (order) {
    case RankOrder::Fit:
      return sortByFit(ranked);
    case RankOrder::BotanicalName:
      return sortByKey(ranked, [](const Species& s) { return s.botanicalName; });
    case RankOrder::CommonName:
      return sortByKey(ranked, [](const Species& s) { return s.commonName; });
    case RankOrder::Height:
      return sortByKey(ranked, [](const Species& s) { return s.height(); });
    case RankOrder::FirstBloom:
      return sortByKey(ranked, [&](const Species& s) { return firstBloomPlace(s, where); });
    case RankOrder::Family:
      return sortByKey(ranked, [](const Species& s) { return s.family; });
  }
}

}  // namespace tussock
