// SPDX-License-Identifier: MIT
// What is known of a species, and where each fact comes from.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/bed.h"
#include "core/model/drift.h"
#include "core/units/date.h"
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

// What lists and people say: yes, no, or nothing that agrees.
enum class Answer { Unknown, Yes, No };
template <>
struct EnumWords<Answer> {
  static constexpr WordTable<Answer, 3> values{
      {{Answer::Unknown, "unknown"}, {Answer::Yes, "yes"}, {Answer::No, "no"}}};
};

// Whether one sees through the plant in flower to what stands behind it.
enum class Body { Unknown, Solid, SeeThrough };
template <>
struct EnumWords<Body> {
  static constexpr WordTable<Body, 3> values{
      {{Body::Unknown, "unknown"}, {Body::Solid, "solid"}, {Body::SeeThrough, "see-through"}}};
};

// What shows in winter. Plants that die to the ground count as deciduous.
enum class WinterLeaf { Unknown, Evergreen, SemiEvergreen, Deciduous };
template <>
struct EnumWords<WinterLeaf> {
  static constexpr WordTable<WinterLeaf, 4> values{{{WinterLeaf::Unknown, "unknown"},
                                                    {WinterLeaf::Evergreen, "evergreen"},
                                                    {WinterLeaf::SemiEvergreen, "semi-evergreen"},
                                                    {WinterLeaf::Deciduous, "deciduous"}}};
};

// By what a plant gets about.
enum class SpreadWay {
  Unknown,
  Clump,
  Taproot,
  RhizomeSlow,
  RhizomeFast,
  Stolon,
  SelfSeeds,
  SelfSeedsFast
};
template <>
struct EnumWords<SpreadWay> {
  static constexpr WordTable<SpreadWay, 8> values{{{SpreadWay::Unknown, "unknown"},
                                                   {SpreadWay::Clump, "clump"},
                                                   {SpreadWay::Taproot, "taproot"},
                                                   {SpreadWay::RhizomeSlow, "rhizome-slow"},
                                                   {SpreadWay::RhizomeFast, "rhizome-fast"},
                                                   {SpreadWay::Stolon, "stolon"},
                                                   {SpreadWay::SelfSeeds, "self-seeds"},
                                                   {SpreadWay::SelfSeedsFast, "self-seeds-fast"}}};
};

// How hard it presses its neighbours.
enum class Competitiveness { Unknown, Low, Medium, High };
template <>
struct EnumWords<Competitiveness> {
  static constexpr WordTable<Competitiveness, 4> values{{{Competitiveness::Unknown, "unknown"},
                                                         {Competitiveness::Low, "low"},
                                                         {Competitiveness::Medium, "medium"},
                                                         {Competitiveness::High, "high"}}};
};

enum class LifeSpan { Unknown, Annual, Biennial, ShortLived, LongLived };
template <>
struct EnumWords<LifeSpan> {
  static constexpr WordTable<LifeSpan, 5> values{{{LifeSpan::Unknown, "unknown"},
                                                  {LifeSpan::Annual, "annual"},
                                                  {LifeSpan::Biennial, "biennial"},
                                                  {LifeSpan::ShortLived, "short-lived perennial"},
                                                  {LifeSpan::LongLived, "long-lived perennial"}}};
};

struct Rgb {
  int red = 0, green = 0, blue = 0;  // 0 to 255
  bool operator==(const Rgb&) const = default;
};

// Where values were read: keys of resources/plants-sources.md, or "memory". The field is a column
// of the plant table, or several with a blank between them.
struct FactSource {
  std::string field;
  std::string keys;
  bool operator==(const FactSource&) const = default;
};

// How it is raised from seed; common practice differs between growers.
struct Sowing {
  std::optional<int> coldMoistDays;
  std::optional<int> warmDaysFirst;
  Answer needsLight = Answer::Unknown;
  std::optional<double> seedsPerGram;
  std::optional<int> germinationLow, germinationHigh;  // percent
  bool operator==(const Sowing&) const = default;
};

struct Species {
  std::string botanicalName;
  std::string family;
  std::string genus;
  std::vector<std::string> synonyms;  // other botanical names it goes by
  std::string commonName;
  std::vector<std::string> otherNames;  // common names besides, by which people look for it
  std::string spanishName;
  std::string usdaSymbol;
  Habit habit = Habit::Forb;
  FlowerForm flowerForm = FlowerForm::None;
  Length heightLow, heightHigh;                   // in flower
  std::optional<Length> foliageLow, foliageHigh;  // of the leaves alone
  Body body = Body::Unknown;
  Length spread;
  Length spacing;  // on centre
  std::vector<SunNeed> sun;
  std::optional<double> sunHoursLeast, sunHoursMost;  // its own, before what `sun` stands for
  std::vector<Moisture> moisture;
  std::vector<SoilTexture> soil;                       // empty when not known
  std::optional<int> bloomFirstMonth, bloomLastMonth;  // 1 to 12; last may be before first
  std::optional<int> bloomFirstWeek, bloomLastWeek;    // 1 to 52, where known finer than by month
  std::string flowerColourWord;
  std::optional<Rgb> flowerColour;
  int zoneLow = 0, zoneHigh = 0;
  SpreadWay spreadWay = SpreadWay::Unknown;
  Competitiveness competitiveness = Competitiveness::Unknown;
  LifeSpan lifeSpan = LifeSpan::Unknown;
  std::optional<int> sociability;  // 1 singly to 5 in large colonies (Hansen and Stahl)
  WinterLeaf winterLeaf = WinterLeaf::Unknown;
  std::optional<int> upByWeek;  // 1 to 52: the new leaves show
  Answer deerResistant = Answer::Unknown;
  Answer rabbitResistant = Answer::Unknown;
  Answer needsSupport = Answer::Unknown;  // neighbours or a stake, or it flops
  std::string toxicityNote;               // if eaten, and sap
  std::string cautionNote;                // thorns and other things to mind
  std::string diseaseNote;         // what passes from plant to plant: mildew, rust, leaf spots, ...
  std::optional<int> diseaseMass;  // plants in one mass from which that matters; open: as usual
  std::string pestNote;            // animals, insects, and rot from wet soil
  std::string hostNote, nectarNote, notes;
  std::string regulated;  // where and as what, such as "noxious weed in ..."
  std::vector<StockSize> sizesSold;
  std::vector<std::string> nativeStates;  // recorded there (USDA PLANTS), a first filter only
  Sowing sowing;
  std::vector<FactSource> sources;

  bool operator==(const Species&) const = default;
  // The middle of the height range, which design uses; law uses heightHigh.
  [[nodiscard]] Length height() const { return (heightLow + heightHigh) * 0.5; }
  [[nodiscard]] bool diseaseProne() const { return !diseaseNote.empty(); }
  // Its own where it is more or less prone than most, else `usual`.
  [[nodiscard]] double massThatMatters(double usual) const { return diseaseMass.value_or(usual); }
  // Weeks 0 to 51. Each end is its own week, else the first week of the first month, or the last of
  // the last. Nothing for what never flowers or of which only one end is known.
  [[nodiscard]] std::optional<WeekRange> bloomWeeks() const;
  struct Months {
    int first, last;  // 1 to 12
  };
  // As given, or those that the weeks at either end mostly lie in.
  [[nodiscard]] std::optional<Months> bloomMonths() const;
  [[nodiscard]] bool bloomsInMonth(int month) const;                      // 1 to 12
  [[nodiscard]] bool bloomsInWeek(int week) const;                        // 0 to 51
  [[nodiscard]] std::string_view sourceOf(std::string_view field) const;  // keys; empty for none
  [[nodiscard]] Layer usualLayer() const;
};

// "Aster novae-angliae" from "Aster novae-angliae 'Purple Dome'": what stands before a cultivar.
[[nodiscard]] std::string_view genusOf(std::string_view botanicalName);

}  // namespace tussock
