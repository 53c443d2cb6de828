// SPDX-License-Identifier: MIT
#include "core/checks/shares.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/checks/checks.h"

namespace tussock {

namespace {

constexpr double kRounding = 1e-9;

struct Measure {
  CheckId check;
  Rank rank;
  std::string_view threshold;
};

void addPlants(Finding& finding, const Survey& survey, Rank rank) {
  for (const SurveyedBed& bed : survey.beds)
    for (const SurveyedDrift& drift : bed.drifts) {
      if (drift.drift->layer != Layer::Main || nameAt(drift, rank) != finding.about) continue;
      finding.place.push_back(placeAround(drift));
      for (const Plant& plant : drift.drift->plants) finding.plants.push_back(plant.id);
    }
}

// A planting is no street: the limit is a hint, and a caution only when one kind is twice what it
// allows though there are kinds enough.
Severity severityOf(double share, double limit, std::size_t kinds) {
  return share > 2.0 * limit && !tooFewKinds(kinds, limit) ? Severity::Caution : Severity::Hint;
}

// One finding names the largest; the words list the others, so that a small garden is not drowned.
std::vector<Finding> checkShare(const Survey& survey, const Measure& measure) {
  const std::vector<Share> shares = sharesOf(survey, measure.rank);
  int total = 0;
  for (const Share& share : shares) total += share.plants;
  const double limit = survey.limit(measure.threshold);
  if (static_cast<double>(total) < survey.limit("share_min_plants")) return {};
  const auto largest = std::find_if(shares.begin(), shares.end(),
                                    [](const Share& share) { return !share.name.empty(); });
  if (largest == shares.end() || largest->share <= limit + kRounding) return {};
  Finding finding;
  finding.check = measure.check;
  finding.severity = severityOf(largest->share, limit, shares.size());
  finding.measured = largest->share;
  finding.required = limit;
  finding.unit = Quantity::Share;
  finding.thresholdId = measure.threshold;
  finding.about = largest->name;
  addPlants(finding, survey, measure.rank);
  return {finding};
}

}  // namespace

std::optional<Rank> rankOf(CheckId check) {
  if (check == CheckId::SpeciesShare) return Rank::Species;
  if (check == CheckId::GenusShare) return Rank::Genus;
  if (check == CheckId::FamilyShare) return Rank::Family;
  return std::nullopt;
}

std::string_view nameAt(const SurveyedDrift& drift, Rank rank) {
  switch (rank) {
    case Rank::Species:
      return drift.drift->species;
    case Rank::Genus:
      return drift.species != nullptr ? std::string_view(drift.species->genus)
                                      : genusOf(drift.drift->species);
    case Rank::Family:
      return drift.species != nullptr ? std::string_view(drift.species->family)
                                      : std::string_view();
  }
  return {};
}

std::vector<Share> sharesOf(const Survey& survey, Rank rank) {
  std::map<std::string_view, int> plants;
  int total = 0;
  for (const SurveyedBed& bed : survey.beds)
    for (const SurveyedDrift& drift : bed.drifts) {
      if (drift.drift->layer != Layer::Main) continue;
      const int count = static_cast<int>(drift.drift->plants.size());
      plants[nameAt(drift, rank)] += count;
      total += count;
    }
  std::vector<Share> shares;
  shares.reserve(plants.size());
  for (const auto& [name, count] : plants)
    shares.push_back({name, count, static_cast<double>(count) / total});
  std::stable_sort(shares.begin(), shares.end(),
                   [](const Share& a, const Share& b) { return a.plants > b.plants; });
  return shares;
}

bool tooFewKinds(std::size_t kinds, double limit) {
  return static_cast<double>(kinds) * limit < 1.0 - kRounding;
}

std::vector<Finding> checkSpeciesShare(const Survey& survey) {
  return checkShare(survey, {CheckId::SpeciesShare, Rank::Species, "species_share"});
}

std::vector<Finding> checkGenusShare(const Survey& survey) {
  return checkShare(survey, {CheckId::GenusShare, Rank::Genus, "genus_share"});
}

std::vector<Finding> checkFamilyShare(const Survey& survey) {
  return checkShare(survey, {CheckId::FamilyShare, Rank::Family, "family_share"});
}

}  // namespace tussock
