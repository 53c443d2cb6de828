// SPDX-License-Identifier: MIT
#include "core/catalog/species_row.h"

#include <algorithm>
#include <cctype>
#include <unordered_map>
#include <utility>

#include <fmt/format.h>

#include "core/catalog/formula_guard.h"
#include "core/catalog/row_cells.h"
#include "core/catalog/source_list.h"
#include "core/units/date.h"

namespace tussock {

namespace {

// A letter, or the sign of a hybrid.
bool beginsAsAName(std::string_view name) {
  const auto first = static_cast<unsigned char>(name.front());
  return std::isalpha(first) != 0 || first > 127;
}

void readNames(RowCells& cells, Species& species) {
  species.botanicalName = cells.name("botanical_name");
  species.family = cells.name("family");
  species.genus = cells.name("genus");
  species.synonyms = cells.parts("synonyms", ';');
  species.commonName = cells.text("common_name");
  species.otherNames = cells.parts("other_names", ';');
  species.spanishName = cells.text("common_name_es");
  species.usdaSymbol = cells.text("usda_symbol");
  if (species.botanicalName.empty() || species.genus == genusOf(species.botanicalName)) return;
  if (!beginsAsAName(species.botanicalName))
    cells.fail("botanical_name",
               "a botanical name: a genus and a species, such as Monarda fistulosa");
  else
    cells.fail("genus", "the first word of the botanical name");
}

std::string shown(double value) {
  return fmt::format("{:.6g}", value);
}
std::string shown(Length value) {
  return fmt::format("{:.6g} cm", value.metres() * 100.0);
}

// "height_min_cm (75 cm) or more": the column alone would send one looking for its value.
std::string orMore(std::string_view column, const auto& least) {
  return fmt::format("{} ({}) or more", column, shown(least));
}

// Both ends or neither, in order; where an end is wrong by itself that is told already.
template <class T>
void checkEnds(RowCells& cells, std::string_view low, const std::optional<T>& least,
               std::string_view high, const std::optional<T>& most) {
  if (!cells.sound(low, high)) return;
  if (least.has_value() != most.has_value())
    cells.fail(least ? high : low, "the other end of the range, which is given");
  else if (least && *most < *least)
    cells.fail(high, orMore(low, *least));
}

std::optional<Length> readLength(RowCells& cells, std::string_view column) {
  const auto centimetres = cells.number(column, 1.0, kTallestPlant);
  if (!centimetres) return std::nullopt;
  return Length::centimetres(*centimetres);
}

void readFoliage(RowCells& cells, Species& species) {
  species.foliageLow = readLength(cells, "foliage_height_min_cm");
  species.foliageHigh = readLength(cells, "foliage_height_max_cm");
  checkEnds(cells, "foliage_height_min_cm", species.foliageLow, "foliage_height_max_cm",
            species.foliageHigh);
  if (cells.sound("foliage_height_max_cm", "height_max_cm") && species.foliageHigh &&
      *species.foliageHigh > species.heightHigh)
    cells.fail("foliage_height_max_cm",
               fmt::format("no more than height_max_cm ({})", shown(species.heightHigh)));
}

void readSizes(RowCells& cells, Species& species) {
  species.heightLow = cells.centimetres("height_min_cm", 1.0, kTallestPlant);
  species.heightHigh = cells.centimetres("height_max_cm", 1.0, kTallestPlant);
  if (cells.sound("height_min_cm", "height_max_cm") && species.heightHigh < species.heightLow)
    cells.fail("height_max_cm", orMore("height_min_cm", species.heightLow));
  species.spread = cells.centimetres("spread_cm", 1.0, kWidestPlant);
  species.spacing = cells.centimetres("spacing_cm", 1.0, kWidestPlant);
  species.body = cells.word("body", Body::Unknown);
  readFoliage(cells, species);
}

// Flowers may last over the New Year, but half a year at most: none known to us does longer, while
// ends that were taken for each other nearly always come to more (common practice).
bool isTooLong(int first, int last, int inYear) {
  return last < first && last - first + inYear + 1 > inYear / 2;
}

void checkBloomOrder(RowCells& cells, const Species& species) {
  const auto check = [&](std::string_view low, int first, std::string_view high, int last,
                         int inYear) {
    if (isTooLong(first, last, inYear))
      cells.fail(high, fmt::format("{} ({}) or more; over the New Year flowers last half a year "
                                   "at most",
                                   low, first));
  };
  if (species.bloomFirstMonth && species.bloomLastMonth)
    check("bloom_start_month", *species.bloomFirstMonth, "bloom_end_month", *species.bloomLastMonth,
          12);
  if (species.bloomFirstWeek && species.bloomLastWeek)
    check("bloom_start_week", *species.bloomFirstWeek, "bloom_end_week", *species.bloomLastWeek,
          kWeeksInYear);
  // One end by month and the other by week.
  if (const auto weeks = species.bloomWeeks();
      weeks && species.bloomFirstWeek.has_value() != species.bloomLastWeek.has_value())
    check("the first week", weeks->first + 1,
          species.bloomLastWeek ? "bloom_end_week" : "bloom_end_month", weeks->last + 1,
          kWeeksInYear);
}

void readBloom(RowCells& cells, Species& species) {
  species.bloomFirstMonth = cells.whole("bloom_start_month", 1, 12);
  species.bloomLastMonth = cells.whole("bloom_end_month", 1, 12);
  species.bloomFirstWeek = cells.whole("bloom_start_week", 1, kWeeksInYear);
  species.bloomLastWeek = cells.whole("bloom_end_week", 1, kWeeksInYear);
  const bool first = species.bloomFirstMonth || species.bloomFirstWeek;
  const bool last = species.bloomLastMonth || species.bloomLastWeek;
  const bool sound = cells.sound("bloom_start_month", "bloom_end_month") &&
                     cells.sound("bloom_start_week", "bloom_end_week");
  if (sound && first != last)
    cells.fail(first ? "bloom_end_month" : "bloom_start_month",
               "a month from 1 to 12, or a week, for the other end of the bloom is given");
  else if (sound)
    checkBloomOrder(cells, species);
  species.flowerColourWord = cells.text("flower_color");
  species.flowerColour = cells.colour("flower_hex");
  species.flowerForm = cells.word("flower_form", FlowerForm::None);
}

void readNeeds(RowCells& cells, Species& species) {
  species.habit = cells.word("layer_form", Habit::Forb);
  species.sun = cells.wordList<SunNeed>("sun");
  species.moisture = cells.wordList<Moisture>("moisture");
  species.soil = cells.words<SoilTexture>("soil");
  species.sunHoursLeast = cells.number("sun_hours_min", 0.0, 24.0);
  species.sunHoursMost = cells.number("sun_hours_max", 0.0, 24.0);
  checkEnds(cells, "sun_hours_min", species.sunHoursLeast, "sun_hours_max", species.sunHoursMost);
  species.zoneLow = cells.whole("hardiness_zone_min", 1, 13).value_or(0);
  species.zoneHigh = cells.whole("hardiness_zone_max", 1, 13).value_or(0);
  if (cells.sound("hardiness_zone_min", "hardiness_zone_max") && species.zoneHigh < species.zoneLow)
    cells.fail("hardiness_zone_max", orMore("hardiness_zone_min", species.zoneLow));
}

bool isState(const std::string& text) {
  return text.size() == 2 &&
         std::all_of(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

void readHabits(RowCells& cells, Species& species) {
  species.spreadWay = cells.word("habit_of_spread", SpreadWay::Unknown);
  species.competitiveness = cells.word("competitiveness", Competitiveness::Unknown);
  species.sociability = cells.whole("sociability_level", 1, 5);
  species.lifeSpan = cells.word("life_span", LifeSpan::Unknown);
  species.winterLeaf = cells.word("winter_leaf", WinterLeaf::Unknown);
  species.upByWeek = cells.whole("up_by_week", 1, kWeeksInYear);
  species.deerResistant = cells.word("deer_resistant", Answer::Unknown);
  species.rabbitResistant = cells.word("rabbit_resistant", Answer::Unknown);
  species.needsSupport = cells.word("needs_support_or_flops", Answer::Unknown);
  species.sizesSold = cells.words<StockSize>("sizes_sold");
}

void readNotes(RowCells& cells, Species& species) {
  species.toxicityNote = cells.text("toxicity_note");
  species.cautionNote = cells.text("caution_note");
  species.diseaseNote = cells.text("disease_note");
  species.diseaseMass = cells.whole("disease_mass_plants", 1, 100000);
  species.pestNote = cells.text("pest_note");
  species.hostNote = cells.text("host_note");
  species.nectarNote = cells.text("nectar_note");
  species.regulated = cells.text("regulated");
  species.notes = cells.text("notes");
  species.nativeStates = cells.parts("native_states", ' ');
  if (!std::all_of(species.nativeStates.begin(), species.nativeStates.end(), isState))
    cells.fail("native_states", "two-letter states joined with spaces");
}

void readSowing(RowCells& cells, Species& species) {
  constexpr int kLongestDays = 730;
  Sowing& sowing = species.sowing;
  sowing.coldMoistDays = cells.whole("stratification_days_cold_moist", 0, kLongestDays);
  sowing.warmDaysFirst = cells.whole("warm_first_days", 0, kLongestDays);
  sowing.needsLight = cells.word("light_to_germinate", Answer::Unknown);
  sowing.seedsPerGram = cells.number("seeds_per_gram", kFewestSeeds, kMostSeeds);
  sowing.germinationLow = cells.whole("germination_min_pct", 0, 100);
  sowing.germinationHigh = cells.whole("germination_max_pct", 0, 100);
  checkEnds(cells, "germination_min_pct", sowing.germinationLow, "germination_max_pct",
            sowing.germinationHigh);
}

void readSources(RowCells& cells, Species& species) {
  if (auto sources = sourcesFrom(cells.text("sources")))
    species.sources = std::move(*sources);
  else
    cells.fail("sources", "source keys, a colon and column names, such as 'USDA: family'");
}

// A few letters tell the columns apart: asked hundreds of times for each row of a long table.
struct ColumnHash {
  std::size_t operator()(std::string_view column) const {
    if (column.empty()) return 0;
    const auto letter = [&](std::size_t at) {
      return static_cast<std::size_t>(static_cast<unsigned char>(column[at]));
    };
    return column.size() + 37 * letter(0) + 1009 * letter(column.size() - 1) +
           5003 * letter(column.size() / 2) + 9001 * letter(column.size() / 4);
  }
};

}  // namespace

std::size_t plantColumnAt(std::string_view column) {
  static const auto kPlaces = [] {
    std::unordered_map<std::string_view, std::size_t, ColumnHash> places;
    for (std::size_t i = 0; i < kPlantColumns.size(); ++i) places.emplace(kPlantColumns[i], i);
    return places;
  }();
  const auto at = kPlaces.find(column);
  return at == kPlaces.end() ? kPlantColumns.size() : at->second;
}

std::optional<Species> speciesFromText(const CellText& text, std::size_t line,
                                       std::string_view fileName,
                                       std::vector<CatalogueError>& errors) {
  RowCells cells(text, line, fileName, errors);
  Species species;
  readNames(cells, species);
  readSizes(cells, species);
  readNeeds(cells, species);
  readBloom(cells, species);
  readHabits(cells, species);
  readNotes(cells, species);
  readSowing(cells, species);
  readSources(cells, species);
  if (cells.failed()) return std::nullopt;
  return species;
}

std::optional<Species> speciesFromRow(const TableRow& row, const ColumnPlaces& places,
                                      std::string_view fileName,
                                      std::vector<CatalogueError>& errors) {
  std::vector<std::string> cells;
  cells.reserve(row.cells.size());
  for (const std::string& cell : row.cells) cells.push_back(unguarded(trimmedCell(cell)));
  const auto text = [&](std::string_view column) {
    const auto at = places.find(column);
    const bool there = at != places.end() && at->second < cells.size();
    return there ? std::string_view(cells[at->second]) : std::string_view();
  };
  return speciesFromText(text, row.line, fileName, errors);
}

}  // namespace tussock
