// SPDX-License-Identifier: MIT
#include "core/catalog/entry_checks.h"

#include <algorithm>
#include <regex>
#include <sstream>

#include <fmt/format.h>

#include "core/catalog/families.h"
#include "core/catalog/native_record.h"

namespace tussock {

namespace {

// A genus with a capital, a hybrid's mark before it perhaps, and at least one word after it.
bool isWholeName(const std::string& name) {
  static const std::regex form("(\xC3\x97 ?)?[A-Z][^ ]* +[^ ].*");
  return std::regex_match(name, form);
}

// Two to three letters of either name, a third of a variety, and a number where that was taken.
bool isSymbol(const std::string& symbol) {
  static const std::regex form("[A-Z]{3,6}[0-9]{0,3}");
  return std::regex_match(symbol, form);
}

std::string againstStates(const std::string& cell) {
  std::istringstream states(cell);
  for (std::string state; states >> state;)
    if (stateName(state).empty())
      return fmt::format(
          "a list of states of the USA or provinces of Canada by their two letters, joined with "
          "spaces: {} is none",
          state);
  return {};
}

}  // namespace

EntryChecks::EntryChecks(const PlantLayers& layers) {
  for (const Species& species : layers.published.species()) {
    names_.insert(species.botanicalName);
    familiesByGenus_[species.genus].insert(species.family);
    if (!species.usdaSymbol.empty())
      nameBySymbol_.try_emplace(species.usdaSymbol, species.botanicalName);
  }
  for (const OwnSpecies& own : layers.personal) take(own);
  for (const OwnSpecies& own : layers.yard.ownSpecies) take(own);
}

void EntryChecks::take(const OwnSpecies& entered) {
  names_.insert(entered.botanicalName);
  for (const OwnFact& fact : entered.facts)
    if (fact.column == "usda_symbol" && !fact.value.empty())
      nameBySymbol_.try_emplace(fact.value, entered.botanicalName);
}

std::string EntryChecks::againstSymbol(const std::string& symbol, std::string_view name) const {
  if (!isSymbol(symbol)) return "a symbol of USDA PLANTS, such as MOFI; leave it blank if unsure";
  const auto at = nameBySymbol_.find(symbol);
  if (at == nameBySymbol_.end() || at->second == name) return {};
  return fmt::format("a symbol of its own, for {} has it; leave it blank if unsure", at->second);
}

bool isGenusOf(const Catalogue& published, std::string_view genus) {
  const auto& all = published.species();
  return std::ranges::find(all, genus, &Species::genus) != all.end();
}

bool EntryChecks::knowsGenusOf(std::string_view name) const {
  return familiesByGenus_.contains(genusOf(name));
}

std::string EntryChecks::againstFamily(const std::string& family, std::string_view name) const {
  if (!isPlantFamily(family)) return "a plant family as botanists spell it, such as Asteraceae";
  const std::string_view genus = genusOf(name);
  const auto at = familiesByGenus_.find(genus);
  if (at == familiesByGenus_.end()) return {};
  const auto& known = at->second;
  if (std::any_of(known.begin(), known.end(),
                  [&](const std::string& one) { return isFamilyNameFor(one, family); }))
    return {};
  return fmt::format("{}, the family of {}", *known.begin(), genus);
}

std::string EntryChecks::againstSynonyms(const std::string& cell, std::string_view name) const {
  std::istringstream parts(cell);
  for (std::string part; std::getline(parts, part, ';');) {
    const auto first = part.find_first_not_of(' ');
    if (first == std::string::npos) continue;
    const std::string synonym = part.substr(first, part.find_last_not_of(' ') - first + 1);
    if (synonym != name && names_.contains(synonym))
      return fmt::format(
          "names that no other plant goes by: {} is the botanical name of one; leave it out",
          synonym);
  }
  return {};
}

std::string EntryChecks::against(const OwnFact& fact, std::string_view name) const {
  if (fact.value.empty()) return {};
  if (fact.column == "synonyms") return againstSynonyms(fact.value, name);
  if (fact.column == "family") return againstFamily(fact.value, name);
  if (fact.column == "usda_symbol") return againstSymbol(fact.value, name);
  return fact.column == "native_states" ? againstStates(fact.value) : std::string();
}

std::vector<CatalogueError> EntryChecks::of(const OwnSpecies& entered, std::string_view title,
                                            std::size_t line) const {
  std::vector<CatalogueError> errors;
  const std::string& name = entered.botanicalName;
  const auto fail = [&](std::string_view column, const std::string& value, std::string expected) {
    errors.push_back({std::string(title), line, std::string(column), value, std::move(expected)});
  };
  if (!names_.contains(name) && !isWholeName(name))
    fail("botanical_name", name,
         "a genus with a species or cultivar after it, such as Monarda fistulosa or Monarda "
         "'Claire Grace'");
  for (const OwnFact& fact : entered.facts)
    if (std::string expected = against(fact, name); !expected.empty())
      fail(fact.column, fact.value, std::move(expected));
  return errors;
}

}  // namespace tussock
