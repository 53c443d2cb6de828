// SPDX-License-Identifier: MIT
#include "core/checks/describe.h"

#include <fmt/format.h>

#include "core/catalog/fit.h"
#include "core/checks/describe_parts.h"
#include "core/checks/thresholds.h"

namespace tussock {

namespace {

FindingText wordsOf(const Finding& finding, const Wording& words, const SunMap* sun) {
  switch (finding.check) {
    case CheckId::Spacing:
      return describeSpacing(finding, words);
    case CheckId::SetBack:
      return describeSetBack(finding, words);
    case CheckId::OddCount:
      return describeOddCount(finding, words);
    case CheckId::SunNeed:
      return describeSunNeed(finding, words);
    case CheckId::HeightOrder:
      return describeHeightOrder(finding, words);
    case CheckId::SpeciesShare:
    case CheckId::GenusShare:
    case CheckId::FamilyShare:
      return describeShare(finding, words);
    case CheckId::DiseaseMass:
      return describeDiseaseMass(finding, words);
    case CheckId::BloomGap:
      return describeBloom(finding, words, sun);
    case CheckId::Obstructed:
      return describeObstructed(finding, words);
    case CheckId::UnknownSpecies:
      return describeUnknownSpecies(finding, words);
    case CheckId::DoubtfulShade:
      return describeDoubtfulShade(finding, words);
    case CheckId::SharedGround:
      return describeSharedGround(finding, words);
    case CheckId::Pieces:
      return describePieces(finding, words);
  }
  return {};
}

// "Largest share of one species: 10 %. Source: ..."
std::string limitOf(const Threshold& threshold, const Wording& words) {
  const double value = thresholdFor(words.yard().settings, threshold.id);
  const std::string own = value == threshold.value
                              ? ""
                              : fmt::format(" (this yard's own; usual is {})",
                                            words.measure(threshold.value, threshold.unit));
  return fmt::format("{}: {}{}. Source: {}.", threshold.label, words.measure(value, threshold.unit),
                     own, threshold.source);
}

// What a class of sun means differs between sources, so the one in use is told.
std::string limitOfSun(const Settings& settings) {
  const SunProfile& profile = sunProfile(settings.sunProfile);
  return fmt::format("Full sun from {:g} hours a day, part from {:g}, less is shade. Source: {}.",
                     profile.fullFrom, profile.partFrom, profile.source);
}

std::string limitOfSetBack(const Finding& finding, const Wording& words) {
  const auto id = idIf<Bed>(finding.subjects.back());
  const Bed* bed = id ? words.yard().beds.find(*id) : nullptr;
  if (bed != nullptr && bed->setback && bed->setback->metres() == finding.required)
    return fmt::format("Set-back of {}: {}. Source: set for this bed.",
                       words.bedName(finding.subjects.back()), words.length(finding.required));
  return limitOf(*findThreshold(finding.thresholdId), words);
}

// The season is guessed where the frost dates are missing, and a guess is told wherever it is used.
std::string assumedSeason(const Settings& settings) {
  const GrowingSeason season = growingSeason(settings);
  if (!season.assumed) return "";
  return fmt::format(" The frost dates are not known; the season is taken as {} to {}.",
                     readableMonthDay(season.first), readableMonthDay(season.last));
}

std::string limitLine(const Finding& finding, const Wording& words) {
  const Settings& settings = words.yard().settings;
  if (finding.check == CheckId::SunNeed) return limitOfSun(settings);
  if (finding.check == CheckId::SetBack) return limitOfSetBack(finding, words);
  if (finding.check == CheckId::DoubtfulShade) return {};  // "no such solid" tells nobody anything
  const Threshold* threshold = findThreshold(finding.thresholdId);
  if (threshold == nullptr && finding.check == CheckId::DiseaseMass)
    return fmt::format("Plants of this species in one mass: {:g}. Source: its plant facts.",
                       finding.required);
  if (threshold == nullptr) return {};
  const bool season = finding.check == CheckId::BloomGap;
  return limitOf(*threshold, words) + (season ? assumedSeason(settings) : "");
}

}  // namespace

FindingText describe(const Finding& finding, const Yard& yard, const Catalogue& facts,
                     const SunMap* sun) {
  const Wording words(yard, facts);
  FindingText text = wordsOf(finding, words, sun);
  text.limit = limitLine(finding, words);
  return text;
}

}  // namespace tussock
