// SPDX-License-Identifier: MIT
// What is known of a species, and where each fact comes from.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/bed.h"
#include "core/model/drift.h"
#include "core/units/length.h"

namespace tussock {

// Growth form, which decides the symbol and the layer a species belongs to.
enum class Habit { Forb, Grass, Sedge, Fern, Shrub, Vine, Bulb };
template <>
struct EnumWords<Habit> {
  static constexpr WordTable<Habit, 7> values{{{Habit::Forb, "forb"},
                                               {Habit::Grass, "grass"},
                                               {Habit::Sedge, "sedge"},
                                               {Habit::Fern, "fern"},
                                               {Habit::Shrub, "shrub"},
                                               {Habit::Vine, "vine"},
                                               {Habit::Bulb, "bulb"}}};
};

// How a flowering plant looks from a few steps off; our own reading, drives the drawn symbol.
enum class FlowerForm { None, Daisy, Spire, Umbel, Globe, Bell, Plume };
template <>
struct EnumWords<FlowerForm> {
  static constexpr WordTable<FlowerForm, 7> values{{{FlowerForm::None, "none"},
                                                    {FlowerForm::Daisy, "daisy"},
                                                    {FlowerForm::Spire, "spire"},
                                                    {FlowerForm::Umbel, "umbel"},
                                                    {FlowerForm::Globe, "globe"},
                                                    {FlowerForm::Bell, "bell"},
                                                    {FlowerForm::Plume, "plume"}}};
};

enum class SunNeed { Full, Part, Shade };
template <>
struct EnumWords<SunNeed> {
  static constexpr WordTable<SunNeed, 3> values{
      {{SunNeed::Full, "full"}, {SunNeed::Part, "part"}, {SunNeed::Shade, "shade"}}};
};

struct Rgb {
  int red = 0, green = 0, blue = 0;  // 0 to 255
  bool operator==(const Rgb&) const = default;
};

// Where one value was read: keys of resources/plants-sources.md, or "memory".
struct FactSource {
  std::string field;
  std::string keys;
  bool operator==(const FactSource&) const = default;
};

// How it is raised from seed; common practice differs between growers.
struct Sowing {
  int coldMoistDays = 0;
  int warmDaysFirst = 0;
  bool needsLight = false;
  std::optional<double> seedsPerGram;
  bool operator==(const Sowing&) const = default;
};

struct Species {
  std::string botanicalName;
  std::string family;
  std::string genus;
  std::string commonName;
  std::string usdaSymbol;
  Habit habit = Habit::Forb;
  FlowerForm flowerForm = FlowerForm::None;
  Length heightLow, heightHigh;  // in flower
  Length spread;
  Length spacing;  // on centre
  std::vector<SunNeed> sun;
  std::vector<Moisture> moisture;
  std::optional<int> bloomFirstMonth, bloomLastMonth;  // 1 to 12; last may be before first
  std::string flowerColourWord;
  std::optional<Rgb> flowerColour;
  int zoneLow = 0, zoneHigh = 0;
  std::string spreadHabit;      // clump, rhizome-slow, ...
  std::string competitiveness;  // low, medium, high
  std::string lifeSpan;
  std::string deerResistant;  // yes, no, unknown
  std::string needsSupport;   // as the table says it
  std::string toxicityNote;
  std::string diseaseNote;  // what passes from plant to plant: mildew, rust, leaf spots, ...
  std::string pestNote;     // animals, insects, and rot from wet soil
  std::string hostNote, notes;
  std::vector<std::string> nativeStates;  // recorded there (USDA PLANTS), a first filter only
  Sowing sowing;
  std::vector<FactSource> sources;

  bool operator==(const Species&) const = default;
  // The middle of the height range, which design uses; law uses heightHigh.
  [[nodiscard]] Length height() const { return (heightLow + heightHigh) * 0.5; }
  [[nodiscard]] bool diseaseProne() const { return !diseaseNote.empty(); }
  [[nodiscard]] bool bloomsInMonth(int month) const;  // 1 to 12
  // From the first week of the first month to the last week of the last.
  [[nodiscard]] bool bloomsInWeek(int week) const;  // 0 to 51
  [[nodiscard]] Layer usualLayer() const;
};

// "Aster novae-angliae" from "Aster novae-angliae 'Purple Dome'": what stands before a cultivar.
[[nodiscard]] std::string_view genusOf(std::string_view botanicalName);

}  // namespace tussock
