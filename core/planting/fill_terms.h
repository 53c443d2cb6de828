// SPDX-License-Identifier: MIT
// The rules that a planting is judged by, each with its weight, and where each comes from.
#pragma once

#include <string_view>
#include <vector>

#include "core/model/names.h"
#include "core/planting/sight.h"

namespace tussock {

enum class FillTerm {
  Height,
  LowEdge,
  Sun,
  Moisture,
  OddCounts,
  DriftSize,
  Proportions,
  Slant,
  Interlocking,
  Apart,
  Repetition,
  Shares,
  DiseaseMass,
  Grasses,
  Spreaders,
  Support,
  Bloom,
  Colour,
};
template <>
struct EnumWords<FillTerm> {
  static constexpr WordTable<FillTerm, 18> values{{{FillTerm::Height, "height"},
                                                   {FillTerm::LowEdge, "low_edge"},
                                                   {FillTerm::Sun, "sun"},
                                                   {FillTerm::Moisture, "moisture"},
                                                   {FillTerm::OddCounts, "odd_counts"},
                                                   {FillTerm::DriftSize, "drift_size"},
                                                   {FillTerm::Proportions, "proportions"},
                                                   {FillTerm::Slant, "slant"},
                                                   {FillTerm::Interlocking, "interlocking"},
                                                   {FillTerm::Apart, "apart"},
                                                   {FillTerm::Repetition, "repetition"},
                                                   {FillTerm::Shares, "shares"},
                                                   {FillTerm::DiseaseMass, "disease_mass"},
                                                   {FillTerm::Grasses, "grasses"},
                                                   {FillTerm::Spreaders, "spreaders"},
                                                   {FillTerm::Support, "support"},
                                                   {FillTerm::Bloom, "bloom"},
                                                   {FillTerm::Colour, "colour"}}};
};
inline constexpr std::size_t kFillTerms = EnumWords<FillTerm>::values.size();

// What a term asks and who says so.
struct TermFacts {
  FillTerm term;
  double weight;            // in the score; our own judgement
  std::string_view title;   // "Height for depth"
  std::string_view asks;    // a sentence
  std::string_view source;  // of the rule
};
[[nodiscard]] const TermFacts& factsOf(FillTerm term);

// Limits that the checks hold a planting to; a fill aims at the same. These are the usual ones;
// what a yard sets otherwise reaches a fill only through the request.
struct FillLimits {
  double hiddenShare = 0.5;
  double speciesShare = 0.10, genusShare = 0.20, familyShare = 0.30;
  double shareMinPlants = 100.0;
  double diseaseMass = 15.0;
  double bloomGapWeeks = 1.0;
  double bloomPerThird = 3.0;  // species in flower in each third of the season
  SightLimits sight;
};

}  // namespace tussock
