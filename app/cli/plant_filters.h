// SPDX-License-Identifier: MIT
// The filters and orders of the bench as options of a command.
#pragma once

#include <string>
#include <vector>

#include <CLI/CLI.hpp>

#include "core/catalog/choose.h"
#include "core/units/measure_text.h"

namespace tussock {

// As typed; several values of one option are choices, options together must all be met.
struct PlantFilterOptions {
  std::vector<std::string> sun, moisture, forms, layers, colours, families, traits;
  std::string inFlower, lowest, highest, recordedIn, order;
};
void addPlantFilters(CLI::App& command, PlantFilterOptions& options);

// Throws UsageError where a word is none of those that the plants have. A bare height is in feet or
// metres as `units` says.
[[nodiscard]] PlantFilter filterFrom(const PlantFilterOptions& options, const Catalogue& facts,
                                     UnitSystem units);
// None when none was asked for.
[[nodiscard]] std::optional<RankOrder> orderFrom(const PlantFilterOptions& options);

}  // namespace tussock
