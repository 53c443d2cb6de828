// SPDX-License-Identifier: MIT
// All species in the order in which they suit a place and what is planted there, with the reasons
// in words. The points are ours (docs/methods-plants.md); they order, and promise nothing.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/catalog/figures.h"
#include "core/catalog/fit.h"
#include "core/catalog/week_range.h"

namespace tussock {

// What sets apart species of equal points; more goes first, in this order. What a mix lacks counts
// before what is good anywhere.
struct Merit {
  int weeks = 0;     // in flower in weeks with too little in flower
  int newLayer = 0;  // on a layer that has nothing yet
  int host = 0;      // feeds caterpillars
  int nectar = 0;
  int leftAlone = 0;  // by deer, by rabbits
  int gentle = 0;     // on its neighbours: 2 low, 1 medium, 0 strong or not known
  int lasting = 0;    // long-lived

  auto operator<=>(const Merit&) const = default;
};

struct Ranked {
  const Species* species = nullptr;
  double points = 0.0;               // 0 to 100; 0 for what does not suit
  Merit merit = {};                  // what decides among equals
  std::vector<std::string> reasons;  // what speaks for it, in words
  std::vector<std::string> costs;    // what speaks against it, and does not leave it out
  std::string overEquals;            // why it goes before the next of as many points, if it does
  std::vector<std::string> whyNot;   // why it is left out; empty when it suits

  [[nodiscard]] bool suits() const { return whyNot.empty(); }
};

// All that is told of one that suits, in one order and with what speaks against it marked: "feeds
// caterpillars", "but crowds its neighbours". Why it is left out of one that does not.
[[nodiscard]] std::vector<std::string> toldReasons(const Ranked& ranked);

struct RankRequest {
  Place place;
  SunProfile profile = sunProfile("usual");
  std::vector<Portion> planted;  // in the bed, or in the list so far
  std::vector<int> season;       // weeks of the growing season, see seasonWeeks
};
// Fewest reasons against it, then most points, then most merit.
[[nodiscard]] bool isBetter(const Ranked& a, const Ranked& b);
// Every species: those that suit first, best first, then by name; those left out follow, fewest
// reasons first. They point into the catalogue, which must live on.
[[nodiscard]] std::vector<Ranked> rankFor(const Catalogue& catalogue, const RankRequest& request);

// The same of some species only.
[[nodiscard]] std::vector<Ranked> rankAmong(const std::vector<const Species*>& species,
                                            const RankRequest& request);

// One species alone.
[[nodiscard]] Ranked rankOf(const Species& species, const RankRequest& request);

// Properties that can be asked for; several together must all be there.
enum class Trait {
  Suits,
  DeerResistant,
  RabbitResistant,
  HostPlant,
  Nectar,
  Evergreen,
  SeeThrough
};
template <>
struct EnumWords<Trait> {
  static constexpr WordTable<Trait, 7> values{{{Trait::Suits, "suits the place"},
                                               {Trait::DeerResistant, "deer leave it"},
                                               {Trait::RabbitResistant, "rabbits leave it"},
                                               {Trait::HostPlant, "feeds caterpillars"},
                                               {Trait::Nectar, "nectar"},
                                               {Trait::Evergreen, "evergreen"},
                                               {Trait::SeeThrough, "see-through"}}};
};

// What is chosen is let through by any of its choices; an empty set lets all through. The parts
// combine: a species must pass each.
struct PlantFilter {
  std::string words;  // as for Catalogue::search
  std::set<SunNeed> sun;
  std::set<Moisture> moisture;
  std::set<Habit> habits;
  std::set<Layer> layers;         // the usual layer
  std::set<std::string> colours;  // flower colour words
  std::set<std::string> families;
  std::set<int> months;                   // 1 to 12: in flower in one of them
  std::optional<Length> lowest, highest;  // of the height in flower
  std::string state;                      // recorded as native there
  std::set<Trait> traits;
};
// The colours by which the filter finds any: of flowers, and of what grasses and sedges flower
// with.
[[nodiscard]] std::set<std::string> coloursToChoose(const Catalogue& catalogue);
[[nodiscard]] std::vector<Ranked> filtered(std::vector<Ranked> all, const Catalogue& catalogue,
                                           const PlantFilter& filter);

enum class RankOrder { Fit, BotanicalName, CommonName, Height, FirstBloom, Family };
template <>
struct EnumWords<RankOrder> {
  static constexpr WordTable<RankOrder, 6> values{{{RankOrder::Fit, "fit"},
                                                   {RankOrder::BotanicalName, "botanical name"},
                                                   {RankOrder::CommonName, "common name"},
                                                   {RankOrder::Height, "height"},
                                                   {RankOrder::FirstBloom, "first bloom"},
                                                   {RankOrder::Family, "family"}}};
};
// Stable, so that equal ones stay as they were. The first in flower is the first in the year of
// that half of the earth, which the weeks of the species must be those of.
void sortBy(std::vector<Ranked>& ranked, RankOrder order, Hemisphere where);

}  // namespace tussock
