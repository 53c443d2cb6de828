// SPDX-License-Identifier: MIT
// The user's own plants before the published ones: a value of the yard's own goes before one of the
// personal catalogue, and that before the published one, which stays visible beside it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/catalog/plant_cells.h"
#include "core/model/yard.h"

namespace tussock {

enum class Origin { Published, Personal, Yard };
template <>
struct EnumWords<Origin> {
  static constexpr WordTable<Origin, 3> values{
      {{Origin::Published, "published"}, {Origin::Personal, "personal"}, {Origin::Yard, "yard"}}};
};

// The three layers of plant facts, each with weeks and months as they are north of the equator, for
// the user's own are kept across yards. Points to what must outlive it. The ids of `personal` mean
// nothing.
struct PlantLayers {
  const Catalogue& published;
  const std::vector<OwnSpecies>& personal;
  const Yard& yard;
};

struct MergedPlants {
  Catalogue catalogue;
  std::vector<CatalogueError> errors;  // own plants that cannot be used; the published one stands
};
// Works through all species: call it when own plants have changed, not at each edit. Values of the
// user's own have the source "own", and after it the keys that they were brought in with. Weeks and
// months are those of the yard's half of the earth: the one place where they are moved.
// `personalRead` has each personal plant over the published one, in their order (speciesOver), so
// that many are not read twice; without it they are read.
[[nodiscard]] MergedPlants mergePlants(const PlantLayers& layers,
                                       std::vector<Species> personalRead = {});

// One value of a plant as it holds, where it is from, and the published one, which is empty when
// there is none.
struct PlantValue {
  std::string column;
  std::string value;
  Origin origin = Origin::Published;
  std::string published;
  std::string sources;          // of the published value: keys, or "memory"
  std::string ownSources = {};  // keys that the user's own value was brought in with
  // Not written by the user: a height of the leaves brought down to the height that is theirs.
  bool heldToHeight = false;

  bool operator==(const PlantValue&) const = default;
};
// In the order of the table's columns, blank ones left out; sources are not values. Empty when no
// layer knows the plant.
[[nodiscard]] std::vector<PlantValue> valuesOf(const PlantLayers& layers, std::string_view name);

// The cells that hold, as `valuesOf` has them, with the published sources of those that are
// published.
[[nodiscard]] PlantCells mergedCells(const PlantLayers& layers, std::string_view name);
// The layer whose plant holds; Published for one that none knows.
[[nodiscard]] Origin originOf(const PlantLayers& layers, std::string_view name);
[[nodiscard]] const OwnSpecies* findOwn(const Yard& yard, std::string_view name);
[[nodiscard]] const OwnSpecies* findOwn(const std::vector<OwnSpecies>& personal,
                                        std::string_view name);
// What is wrong with the plant as it holds; empty when nothing is.
[[nodiscard]] std::vector<CatalogueError> faultsOf(const PlantLayers& layers,
                                                   std::string_view name);
// A personal plant over the published one of its name, which may be null. Nothing where it cannot
// be used; what is wrong is added to `errors`.
[[nodiscard]] std::optional<Species> speciesOver(const Species* published, const OwnSpecies& own,
                                                 std::vector<CatalogueError>& errors);

}  // namespace tussock
