// SPDX-License-Identifier: MIT
// Edits of the user's own plants. Those of a yard are change sets; those of the personal catalogue
// come as the plant before and after, for its file.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/own_plants.h"
#include "core/edit/change.h"

namespace tussock {

// With errors the edit is empty.
struct PlantEdit {
  ChangeSet edit;
  std::vector<CatalogueError> errors;
};

// Each says what is wrong where the plant could not be used afterwards. An empty value takes the
// yard's own value away, so that the personal or published one holds again.
[[nodiscard]] PlantEdit setOwnValue(const PlantLayers& layers, const std::string& name,
                                    const std::string& column, const std::string& value,
                                    IdSource& ids);
// A plant that no layer has yet.
[[nodiscard]] PlantEdit addOwnPlant(const PlantLayers& layers, const PlantCells& cells,
                                    IdSource& ids);
// The values that `name` has and that another plant may have too: not its names and USDA symbol.
[[nodiscard]] PlantCells copiedCells(const PlantLayers& layers, std::string_view name);
// A new plant with those values, to be changed from there.
[[nodiscard]] PlantEdit duplicatePlant(const PlantLayers& layers, std::string_view name,
                                       const std::string& newName, IdSource& ids);
// Takes all the yard's own values of the plant away; its drifts stay.
[[nodiscard]] ChangeSet removeOwnPlant(const Yard& yard, std::string_view name);

// The edit, and with it the personal plants that the yard uses after it and does not carry yet, so
// that the yard opens anywhere.
[[nodiscard]] ChangeSet carrying(const PlantLayers& layers, ChangeSet edit, IdSource& ids);

// A change of the personal catalogue. Absent before: added. Absent after: removed.
struct PersonalEdit {
  std::optional<OwnSpecies> before;
  std::optional<OwnSpecies> after;
};
[[nodiscard]] PersonalEdit inverse(const PersonalEdit& edit);
// Throws EditConflict when the plant is not as `before` says.
[[nodiscard]] std::vector<OwnSpecies> withEdit(std::vector<OwnSpecies> personal,
                                               const PersonalEdit& edit);
// Each of `more` with those there are; of one name, its values go before those it had, which stay
// where it says nothing. By name.
[[nodiscard]] std::vector<OwnSpecies> withTaken(std::vector<OwnSpecies> personal,
                                                const std::vector<OwnSpecies>& more);
// Names of `more` that would put another value in the place of one there is; by name.
[[nodiscard]] std::vector<std::string> overwritten(const std::vector<OwnSpecies>& personal,
                                                   const std::vector<OwnSpecies>& more);
struct PersonalPlantEdit {
  PersonalEdit edit;
  std::vector<CatalogueError> errors;
};
[[nodiscard]] PersonalPlantEdit setPersonalValue(const PlantLayers& layers, const std::string& name,
                                                 const std::string& column,
                                                 const std::string& value);
[[nodiscard]] PersonalPlantEdit addPersonalPlant(const PlantLayers& layers,
                                                 const PlantCells& cells);
[[nodiscard]] PersonalEdit removePersonalPlant(const std::vector<OwnSpecies>& personal,
                                               std::string_view name);

}  // namespace tussock
