// SPDX-License-Identifier: MIT
#include "core/catalog/edit_plants.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>

#include "core/catalog/entry_checks.h"
#include "core/catalog/source_list.h"
#include "core/edit/draft.h"

namespace tussock {

namespace {

constexpr std::string_view kNameColumn = "botanical_name";

constexpr std::string_view kSourcesColumn = "sources";

OwnSpecies withFact(OwnSpecies own, const std::string& column, const std::string& value) {
  const auto at = std::find_if(own.facts.begin(), own.facts.end(),
                               [&](const OwnFact& fact) { return fact.column == column; });
  if (at == own.facts.end()) {
    if (!value.empty()) own.facts.push_back({column, value});
  } else if (value.empty()) {
    own.facts.erase(at);
  } else {
    at->value = value;
  }
  return own;
}

std::vector<FactSource> sourcesOf(const OwnSpecies& own) {
  for (const OwnFact& fact : own.facts)
    if (fact.column == kSourcesColumn)
      return sourcesFrom(fact.value).value_or(std::vector<FactSource>{});
  return {};
}

// With the value alone: where the one before was read says nothing of it.
OwnSpecies withValue(OwnSpecies own, const std::string& column, const std::string& value) {
  std::vector<FactSource> sources = sourcesOf(own);
  if (std::erase_if(sources, [&](const FactSource& one) { return one.field == column; }) > 0)
    own = withFact(std::move(own), std::string(kSourcesColumn), sourcesText(sources));
  return withFact(std::move(own), column, value);
}

// The values of `more` in place of those that `own` has, each with where it was read.
OwnSpecies withAll(OwnSpecies own, const OwnSpecies& more) {
  for (const OwnFact& fact : more.facts)
    if (fact.column != kSourcesColumn) own = withValue(std::move(own), fact.column, fact.value);
  std::vector<FactSource> sources = sourcesOf(own);
  const std::vector<FactSource> theirs = sourcesOf(more);
  sources.insert(sources.end(), theirs.begin(), theirs.end());
  return withFact(std::move(own), std::string(kSourcesColumn), sourcesText(sources));
}

OwnSpecies fromCells(const PlantCells& cells) {
  OwnSpecies own;
  for (const auto& [column, value] : cells) {
    if (column == kNameColumn)
      own.botanicalName = value;
    else if (column != kSourcesColumn && !value.empty())
      own.facts.push_back({column, value});
  }
  return own;
}

// The two ends of a range: one cannot stand without the other.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> kEnds{
    {{"foliage_height_min_cm", "foliage_height_max_cm"},
     {"sun_hours_min", "sun_hours_max"},
     {"germination_min_pct", "germination_max_pct"},
     {"bloom_start_month", "bloom_end_month"}}};

std::string otherEnd(std::string_view column) {
  for (const auto& [low, high] : kEnds)
    if (column == low || column == high) return std::string(column == low ? high : low);
  return {};
}

bool has(const OwnSpecies& own, std::string_view column) {
  return std::any_of(own.facts.begin(), own.facts.end(),
                     [&](const OwnFact& fact) { return fact.column == column; });
}

// With the value, and so that the other end of its range goes with it: the first end written sets
// both, for the other to be written then; the last one taken away takes both. `beneath`: what the
// layers under this one say of the plant.
OwnSpecies withEnds(OwnSpecies own, const PlantCells& beneath, const std::string& column,
                    const std::string& value) {
  own = withValue(std::move(own), column, value);
  const std::string other = otherEnd(column);
  if (other.empty()) return own;
  if (!value.empty() && !beneath.contains(other) && !has(own, other))
    return withValue(std::move(own), other, value);
  if (value.empty() && !beneath.contains(column)) return withValue(std::move(own), other, "");
  return own;
}

OwnSpecies onlyThat(const std::string& name, const std::string& column, const std::string& value) {
  return {{}, name, {{column, value}}};
}

// What stands against a new plant with these values, before the layers are asked: its name, and
// that there are none.
std::vector<CatalogueError> faultsOfNew(const PlantLayers& layers, const OwnSpecies& own) {
  const std::string title = "New plant";
  const std::string& name = own.botanicalName;
  if (name.empty()) return {{title, 0, std::string(kNameColumn), "", "some text"}};
  if (!mergedCells(layers, name).empty())
    return {{title, 0, std::string(kNameColumn), name, "a name that no other plant has"}};
  std::vector<CatalogueError> errors;
  if (own.facts.empty()) (void)speciesFromCells({{std::string(kNameColumn), name}}, title, errors);
  auto odd = EntryChecks(layers).of(own, title);
  errors.insert(errors.end(), odd.begin(), odd.end());
  return errors;
}

std::vector<CatalogueError> faultsAfter(const PlantLayers& layers, const Yard& after,
                                        std::string_view name) {
  return faultsOf({layers.published, layers.personal, after}, name);
}

PlantEdit put(const PlantLayers& layers, OwnSpecies own, IdSource& ids, std::string label) {
  Draft draft(layers.yard);
  const std::string name = own.botanicalName;
  if (!own.id.valid()) own.id = ids.take<OwnSpecies>();
  if (own.facts.empty())
    draft.remove(own.id);
  else
    draft.put(std::move(own));
  auto errors = faultsAfter(layers, draft.yard(), name);
  if (!errors.empty()) return {{}, std::move(errors)};
  return {draft.finish(std::move(label)), {}};
}

PersonalPlantEdit put(const PlantLayers& layers, const OwnSpecies* before, OwnSpecies own) {
  PersonalEdit edit;
  if (before != nullptr) edit.before = *before;
  const std::string name = own.botanicalName;
  if (!own.facts.empty()) edit.after = std::move(own);
  const std::vector<OwnSpecies> after = withEdit(layers.personal, edit);
  auto errors = faultsOf({layers.published, after, layers.yard}, name);
  if (!errors.empty()) return {{}, std::move(errors)};
  return {std::move(edit), {}};
}

void sortByName(std::vector<OwnSpecies>& plants) {
  std::sort(plants.begin(), plants.end(), [](const OwnSpecies& a, const OwnSpecies& b) {
    return a.botanicalName < b.botanicalName;
  });
}

std::set<std::string> usedIn(const Yard& yard) {
  std::set<std::string> names;
  for (const Drift& drift : yard.drifts) names.insert(drift.species);
  for (const Bed& bed : yard.beds)
    for (const ListedSpecies& listed : bed.plantList) names.insert(listed.species);
  for (const Arrangement& arrangement : yard.arrangements)
    for (const KeptDrift& drift : arrangement.drifts) names.insert(drift.species);
  return names;
}

}  // namespace

PlantEdit setOwnValue(const PlantLayers& layers, const std::string& name, const std::string& column,
                      const std::string& value, IdSource& ids) {
  const OwnSpecies* before = findOwn(layers.yard, name);
  OwnSpecies own = before != nullptr ? *before : OwnSpecies{{}, name, {}};
  const Yard nothing;
  own = withEnds(std::move(own), mergedCells({layers.published, layers.personal, nothing}, name),
                 column, value);
  if (before == nullptr && own.facts.empty()) return {};
  auto odd = EntryChecks(layers).of(onlyThat(name, column, value), "This yard's plant " + name);
  if (!odd.empty()) return {{}, std::move(odd)};
  return put(layers, std::move(own), ids, "Change plant");
}

PlantEdit addOwnPlant(const PlantLayers& layers, const PlantCells& cells, IdSource& ids) {
  OwnSpecies own = fromCells(cells);
  auto errors = faultsOfNew(layers, own);
  if (!errors.empty()) return {{}, std::move(errors)};
  return put(layers, std::move(own), ids, "Add plant");
}

PlantCells copiedCells(const PlantLayers& layers, std::string_view name) {
  PlantCells cells = mergedCells(layers, name);
  for (const char* naming : {"botanical_name", "genus", "synonyms", "usda_symbol", "sources"})
    cells.erase(naming);
  return cells;
}

PlantEdit duplicatePlant(const PlantLayers& layers, std::string_view name,
                         const std::string& newName, IdSource& ids) {
  PlantCells cells = copiedCells(layers, name);
  cells.insert_or_assign(std::string(kNameColumn), newName);
  PlantEdit result = addOwnPlant(layers, cells, ids);
  if (!result.edit.empty()) result.edit.label = "Duplicate plant";
  return result;
}

ChangeSet removeOwnPlant(const Yard& yard, std::string_view name) {
  Draft draft(yard);
  if (const OwnSpecies* own = findOwn(yard, name)) draft.remove(own->id);
  return draft.finish("Remove plant");
}

ChangeSet carrying(const PlantLayers& layers, ChangeSet edit, IdSource& ids) {
  if (layers.personal.empty()) return edit;
  const Yard after = apply(layers.yard, edit);
  for (const std::string& name : usedIn(after)) {
    const OwnSpecies* own = findOwn(layers.personal, name);
    if (own == nullptr || findOwn(after, name) != nullptr) continue;
    edit.changes.push_back(
        {std::nullopt, Object(OwnSpecies{ids.take<OwnSpecies>(), name, own->facts})});
  }
  return edit;
}

PersonalEdit inverse(const PersonalEdit& edit) {
  return {edit.after, edit.before};
}

std::vector<OwnSpecies> withEdit(std::vector<OwnSpecies> personal, const PersonalEdit& edit) {
  if (edit.before) {
    const auto at = std::find(personal.begin(), personal.end(), *edit.before);
    if (at == personal.end()) throw EditConflict("The personal plant was changed elsewhere.");
    personal.erase(at);
  }
  if (edit.after) {
    if (findOwn(personal, edit.after->botanicalName) != nullptr)
      throw EditConflict("A personal plant of this name was added elsewhere.");
    personal.push_back(*edit.after);
  }
  sortByName(personal);
  return personal;
}

std::vector<OwnSpecies> withTaken(std::vector<OwnSpecies> personal,
                                  const std::vector<OwnSpecies>& more) {
  std::map<std::string, std::size_t> places;
  for (std::size_t i = 0; i < personal.size(); ++i)
    places.try_emplace(personal[i].botanicalName, i);
  for (const OwnSpecies& own : more) {
    const auto [at, isNew] = places.try_emplace(own.botanicalName, personal.size());
    if (isNew) {
      personal.push_back(own);
      continue;
    }
    OwnSpecies& old = personal[at->second];
    old = withAll(std::move(old), own);
  }
  sortByName(personal);
  return personal;
}

std::vector<std::string> overwritten(const std::vector<OwnSpecies>& personal,
                                     const std::vector<OwnSpecies>& more) {
  std::map<std::string_view, const OwnSpecies*> byName;
  for (const OwnSpecies& old : personal) byName.try_emplace(old.botanicalName, &old);
  std::vector<std::string> names;
  for (const OwnSpecies& own : more) {
    const auto old = byName.find(own.botanicalName);
    if (old == byName.end()) continue;
    const auto& facts = old->second->facts;
    const auto differs = [&](const OwnFact& fact) {
      return fact.column != kSourcesColumn &&
             std::any_of(facts.begin(), facts.end(), [&](const OwnFact& had) {
               return had.column == fact.column && had.value != fact.value;
             });
    };
    if (std::any_of(own.facts.begin(), own.facts.end(), differs))
      names.push_back(own.botanicalName);
  }
  std::sort(names.begin(), names.end());
  return names;
}

PersonalPlantEdit setPersonalValue(const PlantLayers& layers, const std::string& name,
                                   const std::string& column, const std::string& value) {
  const OwnSpecies* before = findOwn(layers.personal, name);
  OwnSpecies own = before != nullptr ? *before : OwnSpecies{{}, name, {}};
  const Yard nothing;
  own = withEnds(std::move(own), mergedCells({layers.published, {}, nothing}, name), column, value);
  auto odd = EntryChecks(layers).of(onlyThat(name, column, value), "Your plant " + name);
  if (!odd.empty()) return {{}, std::move(odd)};
  return put(layers, before, std::move(own));
}

PersonalPlantEdit addPersonalPlant(const PlantLayers& layers, const PlantCells& cells) {
  OwnSpecies own = fromCells(cells);
  auto errors = faultsOfNew(layers, own);
  if (!errors.empty()) return {{}, std::move(errors)};
  return put(layers, nullptr, std::move(own));
}

PersonalEdit removePersonalPlant(const std::vector<OwnSpecies>& personal, std::string_view name) {
  const OwnSpecies* own = findOwn(personal, name);
  return own == nullptr ? PersonalEdit{} : PersonalEdit{*own, std::nullopt};
}

}  // namespace tussock
