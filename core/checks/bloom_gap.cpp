// SPDX-License-Identifier: MIT
#include <algorithm>
#include <unordered_map>

#include "core/catalog/season_weeks.h"
#include "core/catalog/week_range.h"
#include "core/checks/checks.h"

namespace tussock {

namespace {

struct Bloom {
  WeekSet weeks = 0;            // 0 for what shows no flowers
  const Bed* lastIn = nullptr;  // where it was counted last
};
using Flowering = std::unordered_map<const Species*, Bloom>;

struct BedBloom {
  const Bed* bed = nullptr;
  WeekSet weeks = 0;
  int species = 0;  // those that show flowers
};

// Adds the bed's species to the yard's, so that each is looked up once.
BedBloom bloomOf(const SurveyedBed& bed, Flowering& yard) {
  BedBloom result{bed.bed};
  for (const SurveyedDrift& drift : bed.drifts) {
    if (drift.species == nullptr) continue;
    const auto [at, isNew] = yard.try_emplace(drift.species);
    Bloom& bloom = at->second;
    if (isNew && showsFlowers(*drift.species)) bloom.weeks = weeksInFlower(*drift.species);
    if (bloom.weeks == 0 || bloom.lastIn == bed.bed) continue;
    bloom.lastIn = bed.bed;
    result.weeks |= bloom.weeks;
    ++result.species;
  }
  return result;
}

struct WeekLimits {
  double longestGap = 1.0;  // weeks
  GrowingSeason growing;
  std::vector<int> season;

  [[nodiscard]] double lengthOf(WeekRange gap) const { return weeksLong(daysWithin(gap, growing)); }
};

// Those that are longer than the limit.
std::vector<WeekRange> longGaps(WeekSet inFlower, const WeekLimits& limits) {
  std::vector<WeekRange> gaps = gapsIn(inFlower, limits.season);
  std::erase_if(gaps, [&](WeekRange gap) { return limits.lengthOf(gap) <= limits.longestGap; });
  return gaps;
}

Finding gapFinding(WeekRange gap, const WeekLimits& limits) {
  Finding finding;
  finding.check = CheckId::BloomGap;
  finding.severity = Severity::Caution;
  finding.measured = limits.lengthOf(gap);
  finding.required = limits.longestGap;
  finding.unit = Quantity::Weeks;
  finding.thresholdId = "bloom_gap_weeks";
  finding.about = formatWeeks(gap);
  return finding;
}

Finding gapFindingIn(const Bed& bed, WeekRange gap, const WeekLimits& limits) {
  Finding finding = gapFinding(gap, limits);
  finding.severity = Severity::Hint;
  finding.subjects = {refTo(bed.id)};
  finding.place = {bed.outline};
  return finding;
}

void checkThirds(const Survey& survey, const Flowering& yard, const WeekLimits& limits,
                 std::vector<Finding>& findings) {
  const double asked = survey.limit("bloom_per_third");
  for (const auto& [third, word] : EnumWords<SeasonThird>::values) {
    const WeekSet weeks = weeksOf(third, limits.season);
    const auto count = std::count_if(yard.begin(), yard.end(), [&](const auto& entry) {
      return (entry.second.weeks & weeks) != 0;
    });
    if (static_cast<double>(count) >= asked) continue;
    Finding finding;
    finding.check = CheckId::BloomGap;
    finding.severity = Severity::Hint;
    finding.measured = static_cast<double>(count);
    finding.required = asked;
    finding.unit = Quantity::Count;
    finding.thresholdId = "bloom_per_third";
    finding.about = word;
    findings.push_back(std::move(finding));
  }
}

// A bed's gap is told only where the yard as a whole has none, and only of a bed with enough
// species to be meant to flower throughout.
void checkBeds(const Survey& survey, const std::vector<BedBloom>& beds, WeekSet told,
               const WeekLimits& limits, std::vector<Finding>& findings) {
  const double enough = survey.limit("bloom_bed_species");
  for (const BedBloom& bloom : beds) {
    if (bloom.species == 0 || bloom.species < enough) continue;
    for (const WeekRange gap : longGaps(bloom.weeks | told, limits))
      findings.push_back(gapFindingIn(*bloom.bed, gap, limits));
  }
}

}  // namespace

std::vector<Finding> checkBloomGap(const Survey& survey) {
  Flowering yard;
  std::vector<BedBloom> beds;
  WeekSet inFlower = 0, told = 0;
  for (const SurveyedBed& bed : survey.beds) {
    beds.push_back(bloomOf(bed, yard));
    inFlower |= beds.back().weeks;
  }
  if (inFlower == 0) return {};
  const WeekLimits limits{survey.limit("bloom_gap_weeks"), growingSeason(survey.yard.settings),
                          seasonWeeks(survey.yard.settings)};
  std::vector<Finding> findings;
  for (const WeekRange gap : longGaps(inFlower, limits)) {
    findings.push_back(gapFinding(gap, limits));
    told |= weeksOf(gap);
  }
  checkThirds(survey, yard, limits, findings);
  checkBeds(survey, beds, told, limits, findings);
  return findings;
}

}  // namespace tussock
