// SPDX-License-Identifier: MIT
#include "core/catalog/plant_cells.h"

#include <fmt/format.h>

#include "core/catalog/row_cells.h"
#include "core/catalog/source_list.h"
#include "core/catalog/species_row.h"

namespace tussock {

namespace {

// Writes the cells; what is blank is left out. So is what is not known, unless that itself has a
// source: lists that disagree.
class CellWriter {
 public:
  explicit CellWriter(const Species& species) : sources_(species.sources) {}

  void text(std::string_view column, std::string_view value) {
    if (!value.empty()) cells_.emplace(column, value);
  }
  void whole(std::string_view column, std::optional<int> value) {
    if (value) text(column, std::to_string(*value));
  }
  void number(std::string_view column, std::optional<double> value) {
    if (value) text(column, fmt::format("{:.10g}", *value));
  }
  void length(std::string_view column, std::optional<Length> value) {
    if (value) number(column, value->metres() * 100.0);
  }
  template <NamedEnum E>
  void word(std::string_view column, E value, E unknown) {
    const bool looked = !keysOf(sources_, column).empty();
    if (value != unknown || looked) text(column, wordOf(value));
  }
  template <NamedEnum E>
  void words(std::string_view column, const std::vector<E>& values) {
    std::string all;
    for (const E value : values) all.append(all.empty() ? "" : ";").append(wordOf(value));
    text(column, all);
  }
  void parts(std::string_view column, const std::vector<std::string>& values,
             std::string_view between) {
    text(column, fmt::format("{}", fmt::join(values, between)));
  }
  [[nodiscard]] PlantCells take() { return std::move(cells_); }

 private:
  const std::vector<FactSource>& sources_;
  PlantCells cells_;
};

void writeNames(CellWriter& to, const Species& s) {
  to.text("botanical_name", s.botanicalName);
  to.parts("synonyms", s.synonyms, ";");
  to.text("family", s.family);
  to.text("genus", s.genus);
  to.text("common_name", s.commonName);
  to.parts("other_names", s.otherNames, ";");
  to.text("common_name_es", s.spanishName);
  to.text("usda_symbol", s.usdaSymbol);
  to.text("layer_form", wordOf(s.habit));
}

void writeSizes(CellWriter& to, const Species& s) {
  to.length("height_min_cm", s.heightLow);
  to.length("height_max_cm", s.heightHigh);
  to.length("foliage_height_min_cm", s.foliageLow);
  to.length("foliage_height_max_cm", s.foliageHigh);
  to.word("body", s.body, Body::Unknown);
  to.length("spread_cm", s.spread);
  to.length("spacing_cm", s.spacing);
}

std::string hexOf(Rgb colour) {
  return fmt::format("#{:02X}{:02X}{:02X}", colour.red, colour.green, colour.blue);
}

void writeNeeds(CellWriter& to, const Species& s) {
  to.words("sun", s.sun);
  to.number("sun_hours_min", s.sunHoursLeast);
  to.number("sun_hours_max", s.sunHoursMost);
  to.words("moisture", s.moisture);
  to.words("soil", s.soil);
  to.whole("bloom_start_month", s.bloomFirstMonth);
  to.whole("bloom_end_month", s.bloomLastMonth);
  to.whole("bloom_start_week", s.bloomFirstWeek);
  to.whole("bloom_end_week", s.bloomLastWeek);
  to.text("flower_color", s.flowerColourWord);
  if (s.flowerColour) to.text("flower_hex", hexOf(*s.flowerColour));
  to.text("flower_form", wordOf(s.flowerForm));
  if (s.zoneLow > 0) to.whole("hardiness_zone_min", s.zoneLow);
  if (s.zoneHigh > 0) to.whole("hardiness_zone_max", s.zoneHigh);
}

void writeHabits(CellWriter& to, const Species& s) {
  to.word("habit_of_spread", s.spreadWay, SpreadWay::Unknown);
  to.word("competitiveness", s.competitiveness, Competitiveness::Unknown);
  to.whole("sociability_level", s.sociability);
  to.word("life_span", s.lifeSpan, LifeSpan::Unknown);
  to.word("winter_leaf", s.winterLeaf, WinterLeaf::Unknown);
  to.whole("up_by_week", s.upByWeek);
  to.words("sizes_sold", s.sizesSold);
  to.word("deer_resistant", s.deerResistant, Answer::Unknown);
  to.word("rabbit_resistant", s.rabbitResistant, Answer::Unknown);
  to.word("needs_support_or_flops", s.needsSupport, Answer::Unknown);
}

void writeSowing(CellWriter& to, const Sowing& sowing) {
  to.whole("stratification_days_cold_moist", sowing.coldMoistDays);
  to.whole("warm_first_days", sowing.warmDaysFirst);
  to.word("light_to_germinate", sowing.needsLight, Answer::Unknown);
  to.number("seeds_per_gram", sowing.seedsPerGram);
  to.whole("germination_min_pct", sowing.germinationLow);
  to.whole("germination_max_pct", sowing.germinationHigh);
}

void writeNotes(CellWriter& to, const Species& s) {
  to.text("toxicity_note", s.toxicityNote);
  to.text("caution_note", s.cautionNote);
  to.text("disease_note", s.diseaseNote);
  to.whole("disease_mass_plants", s.diseaseMass);
  to.text("pest_note", s.pestNote);
  to.text("host_note", s.hostNote);
  to.text("nectar_note", s.nectarNote);
  to.text("regulated", s.regulated);
  to.parts("native_states", s.nativeStates, " ");
  to.text("notes", s.notes);
}

}  // namespace

PlantCells cellsOf(const Species& species) {
  CellWriter to(species);
  writeNames(to, species);
  writeSizes(to, species);
  writeNeeds(to, species);
  writeHabits(to, species);
  writeSowing(to, species.sowing);
  writeNotes(to, species);
  to.text("sources", sourcesText(species.sources));
  return to.take();
}

std::optional<Species> speciesFromCells(const PlantCells& cells, std::string_view fileName,
                                        std::vector<CatalogueError>& errors) {
  const auto text = [&](std::string_view column) {
    const auto at = cells.find(column);
    return at == cells.end() ? std::string_view() : trimmedCell(at->second);
  };
  return speciesFromText(text, 0, fileName, errors);
}

bool isPlantColumn(std::string_view column) {
  return plantColumnAt(column) < kPlantColumns.size();
}

}  // namespace tussock
