// SPDX-License-Identifier: MIT
// A species as the cells of a plant table, and back.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"

namespace tussock {

// Text by column name (kPlantColumns); what is blank has no entry.
using PlantCells = std::map<std::string, std::string, std::less<>>;

[[nodiscard]] PlantCells cellsOf(const Species& species);
// Nothing when a value is missing or wrong; each is added to `errors` with line 0.
[[nodiscard]] std::optional<Species> speciesFromCells(const PlantCells& cells,
                                                      std::string_view fileName,
                                                      std::vector<CatalogueError>& errors);
// True for a column that a plant table has.
[[nodiscard]] bool isPlantColumn(std::string_view column);

}  // namespace tussock
