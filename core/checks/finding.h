// SPDX-License-Identifier: MIT
// What a check found, as data. Words are made from it in describe.h.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/model/yard.h"

namespace tussock {

enum class CheckId {
  Spacing,
  SetBack,
  OddCount,
  SunNeed,
  HeightOrder,
  SpeciesShare,
  GenusShare,
  FamilyShare,
  DiseaseMass,
  BloomGap,
  Obstructed,
  UnknownSpecies,
  DoubtfulShade,
  SharedGround,
  Pieces,
};
template <>
struct EnumWords<CheckId> {
  static constexpr WordTable<CheckId, 15> values{{{CheckId::Spacing, "spacing"},
                                                  {CheckId::SetBack, "set_back"},
                                                  {CheckId::OddCount, "odd_count"},
                                                  {CheckId::SunNeed, "sun_need"},
                                                  {CheckId::HeightOrder, "height_order"},
                                                  {CheckId::SpeciesShare, "species_share"},
                                                  {CheckId::GenusShare, "genus_share"},
                                                  {CheckId::FamilyShare, "family_share"},
                                                  {CheckId::DiseaseMass, "disease_mass"},
                                                  {CheckId::BloomGap, "bloom_gap"},
                                                  {CheckId::Obstructed, "obstructed"},
                                                  {CheckId::UnknownSpecies, "unknown_species"},
                                                  {CheckId::DoubtfulShade, "doubtful_shade"},
                                                  {CheckId::SharedGround, "shared_ground"},
                                                  {CheckId::Pieces, "pieces"}}};
};

enum class Severity { Hint, Caution, Alert };
template <>
struct EnumWords<Severity> {
  static constexpr WordTable<Severity, 3> values{
      {{Severity::Hint, "hint"}, {Severity::Caution, "caution"}, {Severity::Alert, "alert"}}};
};

enum class Quantity { Metres, Hours, Share, Count, Weeks };
template <>
struct EnumWords<Quantity> {
  static constexpr WordTable<Quantity, 5> values{{{Quantity::Metres, "m"},
                                                  {Quantity::Hours, "h"},
                                                  {Quantity::Share, "share"},
                                                  {Quantity::Count, "count"},
                                                  {Quantity::Weeks, "weeks"}}};
};

struct Finding {
  CheckId check = CheckId::Spacing;
  Severity severity = Severity::Caution;
  std::vector<ObjectRef> subjects;  // beds, drifts, solids concerned; the first is the main one
  std::vector<Id<Plant>> plants;    // single plants concerned, if it comes down to them
  std::vector<Polygon> place;       // what to show on the plan
  double measured = 0.0;
  double required = 0.0;
  Quantity unit = Quantity::Metres;
  std::string thresholdId;  // into thresholds.h
  std::string about;        // a genus, family, species or week range, where it matters

  bool operator==(const Finding&) const = default;
};

// Check, subjects and `about`: the same finding next time has the same key.
[[nodiscard]] std::string keyOf(const Finding& finding);

// Whether the bed, or a drift that lies in it, is among the subjects.
[[nodiscard]] bool isAbout(const Finding& finding, const Yard& yard, Id<Bed> bed);

}  // namespace tussock
