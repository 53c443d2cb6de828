// SPDX-License-Identifier: MIT
// One row of a plant table as a species.
#pragma once

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/catalog/table.h"

namespace tussock {

// Every column of a plant table, in the order of the shipped one.
inline constexpr std::array<std::string_view, 57> kPlantColumns{"botanical_name",
                                                                "synonyms",
                                                                "family",
                                                                "genus",
                                                                "common_name",
                                                                "other_names",
                                                                "common_name_es",
                                                                "usda_symbol",
                                                                "layer_form",
                                                                "height_min_cm",
                                                                "height_max_cm",
                                                                "foliage_height_min_cm",
                                                                "foliage_height_max_cm",
                                                                "body",
                                                                "spread_cm",
                                                                "spacing_cm",
                                                                "sun",
                                                                "sun_hours_min",
                                                                "sun_hours_max",
                                                                "moisture",
                                                                "soil",
                                                                "bloom_start_month",
                                                                "bloom_end_month",
                                                                "bloom_start_week",
                                                                "bloom_end_week",
                                                                "flower_color",
                                                                "flower_hex",
                                                                "flower_form",
                                                                "hardiness_zone_min",
                                                                "hardiness_zone_max",
                                                                "habit_of_spread",
                                                                "competitiveness",
                                                                "sociability_level",
                                                                "life_span",
                                                                "winter_leaf",
                                                                "up_by_week",
                                                                "stratification_days_cold_moist",
                                                                "warm_first_days",
                                                                "light_to_germinate",
                                                                "seeds_per_gram",
                                                                "germination_min_pct",
                                                                "germination_max_pct",
                                                                "sizes_sold",
                                                                "deer_resistant",
                                                                "rabbit_resistant",
                                                                "toxicity_note",
                                                                "caution_note",
                                                                "needs_support_or_flops",
                                                                "disease_note",
                                                                "disease_mass_plants",
                                                                "pest_note",
                                                                "host_note",
                                                                "nectar_note",
                                                                "regulated",
                                                                "native_states",
                                                                "notes",
                                                                "sources"};

// The largest sizes that a table may give, in centimetres: a tall vine or tree.
inline constexpr double kTallestPlant = 6000.0;
inline constexpr double kWidestPlant = 3000.0;
// Seeds in a gram: from coconuts to orchids, with room to spare (common practice).
inline constexpr double kFewestSeeds = 0.001;
inline constexpr double kMostSeeds = 1e6;

// Where each column stands in the rows of a table.
using ColumnPlaces = std::map<std::string, std::size_t, std::less<>>;

// The place of that column among them; their number for one that a plant table does not have.
[[nodiscard]] std::size_t plantColumnAt(std::string_view column);

// The text of a plant's cell by its column, without the blanks around it; empty where there is
// none. It stands as long as the row that it is of.
using CellText = std::function<std::string_view(std::string_view column)>;
// Nothing when a value is missing or wrong; each is added to `errors`, with the line given.
[[nodiscard]] std::optional<Species> speciesFromText(const CellText& cells, std::size_t line,
                                                     std::string_view fileName,
                                                     std::vector<CatalogueError>& errors);

// Nothing when the row has an error; each is added to `errors`.
[[nodiscard]] std::optional<Species> speciesFromRow(const TableRow& row, const ColumnPlaces& places,
                                                    std::string_view fileName,
                                                    std::vector<CatalogueError>& errors);

}  // namespace tussock
