// SPDX-License-Identifier: MIT
#include "core/catalog/entry_checks.h"

#include <algorithm>
#include <regex>

#include <fmt/format.h>

#include "core/catalog/families.h"

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

}  // namespace

EntryChecks::EntryChecks(const PlantLayers& layers) {
  for (const Species& species : layers.published.species()) {
    names_.insert(species.botanicalName);
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
  for (const OwnFact& fact : entered.facts) {
    if (fact.column == "family" && !fact.value.empty() && !isPlantFamily(fact.value))
      fail(fact.column, fact.value, "a plant family as botanists spell it, such as Asteraceae");
    if (fact.column != "usda_symbol" || fact.value.empty()) continue;
    if (std::string expected = againstSymbol(fact.value, name); !expected.empty())
      fail(fact.column, fact.value, std::move(expected));
  }
  return errors;
}

}  // namespace tussock
