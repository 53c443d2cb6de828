// SPDX-License-Identifier: MIT
#include "core/catalog/own_plants.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/own_cells.h"
#include "core/catalog/row_cells.h"
#include "core/catalog/source_list.h"
#include "core/catalog/species_row.h"

namespace tussock {

namespace {

constexpr std::string_view kName = "botanical_name";
constexpr std::string_view kSources = "sources";

struct Layered {
  PlantCells cells;
  PlantCells published;
  std::map<std::string, Origin, std::less<>> origins;    // of the cells that are not published
  std::set<std::string, std::less<>> dropped;            // published, but void beside an own value
  std::set<std::string, std::less<>> held;               // to an own height, not written
  std::map<std::string, std::string, std::less<>> keys;  // of sources that own values came with
};

std::string_view factOf(const OwnSpecies& own, std::string_view column) {
  for (const OwnFact& fact : own.facts)
    if (fact.column == column) return fact.value;
  return {};
}

void setOwn(Layered& onto, const std::string& column, const std::string& value, Origin origin,
            std::string_view keys = {}) {
  onto.cells.insert_or_assign(column, value);
  onto.origins.insert_or_assign(column, origin);
  onto.keys.insert_or_assign(column, std::string(keys));
}

// A month of one's own is not to be outdone by a week from beneath.
void dropFinerWeeks(Layered& onto, const OwnSpecies& own) {
  for (const auto& [month, week] : {std::pair("bloom_start_month", "bloom_start_week"),
                                    std::pair("bloom_end_month", "bloom_end_week")})
    for (const OwnFact& fact : own.facts)
      if (fact.column == month && !fact.value.empty()) {
        onto.cells.erase(week);
        onto.origins.erase(week);
        onto.dropped.insert(week);
      }
}

void overlay(Layered& onto, const OwnSpecies* own, Origin origin) {
  if (own == nullptr) return;
  dropFinerWeeks(onto, *own);
  const auto sources = sourcesFrom(factOf(*own, kSources)).value_or(std::vector<FactSource>{});
  for (const OwnFact& fact : own->facts)
    if (!fact.value.empty() && fact.column != kName && fact.column != kSources)
      setOwn(onto, fact.column, fact.value, origin, keysOf(sources, fact.column));
}

// 0 for what is no number: the reader tells of it, under its own column alone.
double numberIn(const Layered& in, std::string_view column) {
  const auto at = in.cells.find(column);
  if (at == in.cells.end()) return 0.0;
  const std::string_view cell = at->second;
  double value = 0.0;
  const auto read = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  const std::string_view rest(read.ptr, static_cast<std::size_t>(cell.end() - read.ptr));
  return rest.find_first_not_of(' ') == std::string_view::npos ? value : 0.0;
}

// A height of one's own that is under the leaves' height beneath it brings the leaves down with it.
void lowerLeaves(Layered& onto) {
  const auto most = onto.cells.find("height_max_cm");
  if (!onto.origins.contains("height_max_cm") || onto.origins.contains("foliage_height_max_cm"))
    return;
  const double highest = numberIn(onto, "height_max_cm");
  for (const char* column : {"foliage_height_min_cm", "foliage_height_max_cm"})
    if (highest >= 1.0 && numberIn(onto, column) > highest) {
      onto.held.insert(column);
      setOwn(onto, column, std::string(most->second), onto.origins.at("height_max_cm"));
    }
}

// One plant in each layer; null where that does not have it.
struct InLayers {
  const Species* published = nullptr;
  const OwnSpecies* personal = nullptr;
  const OwnSpecies* yard = nullptr;

  [[nodiscard]] bool known() const { return published || personal || yard; }
};

InLayers inLayers(const PlantLayers& layers, std::string_view name) {
  return {layers.published.find(name), findOwn(layers.personal, name), findOwn(layers.yard, name)};
}

Layered layered(const InLayers& in, std::string_view name) {
  Layered result;
  if (!in.known()) return result;
  if (in.published) result.published = cellsOf(*in.published);
  result.cells = result.published;
  overlay(result, in.personal, Origin::Personal);
  overlay(result, in.yard, Origin::Yard);
  lowerLeaves(result);
  result.cells.insert_or_assign(std::string(kName), std::string(name));
  result.cells.try_emplace("genus", genusOf(name));
  return result;
}

// The published sources without those of values that are the user's own, and theirs as "own", with
// the keys that they came with.
void setSources(Species& species, const Layered& from) {
  std::erase_if(species.sources, [&](const FactSource& source) {
    return from.origins.contains(source.field) || from.dropped.contains(source.field);
  });
  for (const auto& [column, origin] : from.origins)
    species.sources.push_back({column, asOwn(from.keys.at(column))});
}

std::string titleFor(const InLayers& in, std::string_view name) {
  return fmt::format("{} {}", in.yard ? "This yard's plant" : "Your plant", name);
}

void checkColumn(std::string_view column, const std::string& title,
                 std::vector<CatalogueError>& errors) {
  if (!isPlantColumn(column))
    errors.push_back(
        {title, 0, std::string(column), std::string(column), "a column of the plant table"});
}

void checkSources(const OwnSpecies* own, const std::string& title,
                  std::vector<CatalogueError>& errors) {
  if (own != nullptr && !forEachSource(factOf(*own, kSources), [](auto, auto) {}))
    errors.push_back({title, 0, std::string(kSources), std::string(factOf(*own, kSources)),
                      "source keys, a colon and column names, such as 'USDA: family'"});
}

// The plant where one layer alone has it, and the published facts do not; else null.
const OwnSpecies* onlyOwn(const InLayers& in) {
  if (in.published != nullptr || (in.personal != nullptr) == (in.yard != nullptr)) return nullptr;
  return in.personal != nullptr ? in.personal : in.yard;
}

// What laying it over nothing gives, without the copies.
std::optional<Species> readOnly(const OwnSpecies& own, const std::string& title,
                                std::vector<CatalogueError>& errors) {
  const OwnCells cells(own);
  const std::size_t before = errors.size();
  for (const std::string_view column : cells.strangeColumns()) checkColumn(column, title, errors);
  checkSources(&own, title, errors);
  const auto text = [&](std::string_view column) { return cells.text(column); };
  auto species = speciesFromText(text, 0, title, errors);
  if (!species || errors.size() > before) return std::nullopt;
  species->sources = cells.sources();
  return species;
}

const char* whoseWords(Origin origin) {
  switch (origin) {
    case Origin::Published:
      return "published";
    case Origin::Personal:
      return "that of your plants of all yards";
    case Origin::Yard:
      return "that of this yard";
  }
  return "";
}

// Where two layers of one's own do not go together, whose the other value is, and what holds.
void tellWhose(CatalogueError& error, const InLayers& in, const Layered& from,
               std::string_view name) {
  const auto layerOf = [&](std::string_view column) {
    const auto at = from.origins.find(column);
    return at == from.origins.end() ? Origin::Published : at->second;
  };
  for (const auto& [column, cell] : from.cells) {
    const std::size_t at = error.expected.find(column + " (");
    if (at == std::string::npos || (at > 0 && error.expected[at - 1] != ' ')) continue;
    if (layerOf(column) == layerOf(error.column)) return;
    error.expected +=
        fmt::format("; {} is {}, {} {}. Until one of them is changed, {}", error.column,
                    whoseWords(layerOf(error.column)), column, whoseWords(layerOf(column)),
                    in.published != nullptr ? fmt::format("what is published of {} holds", name)
                                            : fmt::format("{} is not in use", name));
    return;
  }
}

std::optional<Species> read(const InLayers& in, std::string_view name,
                            std::vector<CatalogueError>& errors) {
  const std::string title = titleFor(in, name);
  if (const OwnSpecies* own = onlyOwn(in)) return readOnly(*own, title, errors);
  const Layered from = layered(in, name);
  const std::size_t before = errors.size();
  for (const auto& [column, origin] : from.origins) checkColumn(column, title, errors);
  for (const OwnSpecies* own : {in.personal, in.yard}) checkSources(own, title, errors);
  auto species = speciesFromCells(from.cells, title, errors);
  if (in.personal != nullptr && in.yard != nullptr)
    for (std::size_t i = before; i < errors.size(); ++i) tellWhose(errors[i], in, from, name);
  if (!species || errors.size() > before) return std::nullopt;
  setSources(*species, from);
  return species;
}

using Named = std::pair<std::string_view, InLayers>;

// In order of names, each once, so that many own plants are merged in one pass.
std::vector<Named> ownByName(const PlantLayers& layers) {
  std::vector<Named> all;
  all.reserve(layers.personal.size() + layers.yard.ownSpecies.size());
  for (const OwnSpecies& own : layers.personal)
    all.push_back({own.botanicalName, {nullptr, &own, nullptr}});
  for (const OwnSpecies& own : layers.yard.ownSpecies)
    all.push_back({own.botanicalName, {nullptr, nullptr, &own}});
  std::ranges::stable_sort(all, {}, &Named::first);
  std::vector<Named> once;
  once.reserve(all.size());
  for (const auto& [name, in] : all) {
    if (once.empty() || once.back().first != name)
      once.push_back({name, {layers.published.find(name), nullptr, nullptr}});
    InLayers& known = once.back().second;
    if (in.personal != nullptr) known.personal = in.personal;
    if (in.yard != nullptr) known.yard = in.yard;
  }
  return once;
}

// As it was read with the personal plants, where that still holds; else null.
Species* readAlready(const InLayers& in, const PlantLayers& layers,
                     std::vector<Species>& personalRead) {
  if (in.personal == nullptr || in.yard != nullptr || personalRead.size() != layers.personal.size())
    return nullptr;
  return &personalRead[static_cast<std::size_t>(in.personal - layers.personal.data())];
}

}  // namespace

const OwnSpecies* findOwn(const Yard& yard, std::string_view name) {
  for (const OwnSpecies& own : yard.ownSpecies)
    if (own.botanicalName == name) return &own;
  return nullptr;
}

const OwnSpecies* findOwn(const std::vector<OwnSpecies>& personal, std::string_view name) {
  const auto at = std::find_if(personal.begin(), personal.end(),
                               [&](const OwnSpecies& own) { return own.botanicalName == name; });
  return at == personal.end() ? nullptr : &*at;
}

Origin originOf(const PlantLayers& layers, std::string_view name) {
  if (findOwn(layers.yard, name) != nullptr) return Origin::Yard;
  return findOwn(layers.personal, name) != nullptr ? Origin::Personal : Origin::Published;
}

MergedPlants mergePlants(const PlantLayers& layers, std::vector<Species> personalRead) {
  const std::vector<Named> own = ownByName(layers);
  const Hemisphere where = hemisphereOf(layers.yard.settings);
  if (own.empty()) return {layers.published.in(where), {}};
  MergedPlants merged;
  const std::vector<Species>& published = layers.published.species();
  std::vector<Species> all;
  all.reserve(published.size() + own.size());
  auto next = published.begin();  // both in order of names: so is the whole
  for (const auto& [name, in] : own) {
    while (next != published.end() && next->botanicalName < name) all.push_back(*next++);
    if (next != published.end() && next->botanicalName == name) ++next;
    if (Species* ready = readAlready(in, layers, personalRead))
      all.push_back(std::move(*ready));
    else if (auto species = read(in, name, merged.errors))
      all.push_back(std::move(*species));
    else if (in.published != nullptr)
      all.push_back(*in.published);
  }
  all.insert(all.end(), next, published.end());
  merged.catalogue = Catalogue(std::move(all)).in(where);
  return merged;
}

std::vector<PlantValue> valuesOf(const PlantLayers& layers, std::string_view name) {
  const InLayers in = inLayers(layers, name);
  const Layered from = layered(in, name);
  std::vector<PlantValue> values;
  for (const std::string_view column : kPlantColumns) {
    const auto at = from.cells.find(column);
    if (at == from.cells.end() || column == kSources) continue;
    PlantValue value{std::string(column), at->second, Origin::Published, {}, {}};
    if (const auto origin = from.origins.find(column); origin != from.origins.end())
      value.origin = origin->second;
    if (const auto there = from.published.find(column); there != from.published.end())
      value.published = there->second;
    if (in.published) value.sources = in.published->sourceOf(column);
    if (const auto keys = from.keys.find(column); keys != from.keys.end())
      value.ownSources = keys->second;
    value.heldToHeight = from.held.contains(column);
    values.push_back(std::move(value));
  }
  return values;
}

PlantCells mergedCells(const PlantLayers& layers, std::string_view name) {
  return layered(inLayers(layers, name), name).cells;
}

std::vector<CatalogueError> faultsOf(const PlantLayers& layers, std::string_view name) {
  std::vector<CatalogueError> errors;
  const InLayers in = inLayers(layers, name);
  if (in.known()) (void)read(in, name, errors);
  return errors;
}

std::optional<Species> speciesOver(const Species* published, const OwnSpecies& own,
                                   std::vector<CatalogueError>& errors) {
  return read({published, &own, nullptr}, own.botanicalName, errors);
}

}  // namespace tussock
