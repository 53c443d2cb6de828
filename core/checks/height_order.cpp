// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "core/checks/checks.h"
#include "core/checks/view.h"

namespace tussock {

namespace {

using DriftPair = std::pair<const SurveyedDrift*, const SurveyedDrift*>;  // rear, front
using ById = decltype([](const DriftPair& a, const DriftPair& b) {
  return std::pair(a.first->drift->id, a.second->drift->id) <
         std::pair(b.first->drift->id, b.second->drift->id);
});
using HiddenShares = std::map<DriftPair, double, ById>;  // summed over the rear drift's plants

// The most that each front drift hides of one rear plant.
using HiddenOfPlant = std::vector<std::pair<const SurveyedDrift*, double>>;

void keepMost(HiddenOfPlant& hidden, const SurveyedDrift* front, double share) {
  const auto known = std::find_if(hidden.begin(), hidden.end(),
                                  [front](const auto& entry) { return entry.first == front; });
  if (known == hidden.end()) {
    hidden.emplace_back(front, share);
  } else {
    known->second = std::max(known->second, share);
  }
}

HiddenOfPlant hiddenOf(const Standing& rear, const Lineup& lineup, const Sight& sight,
                       const SightLimits& limits) {
  HiddenOfPlant hidden;
  lineup.forEachBetween(rear, sight, limits.hidesWithin, [&](const Standing& front) {
    if (front.drift == rear.drift) return;
    const double share = hiddenShare(rear.seen, front.seen, front.at - rear.at, sight, limits);
    if (share > 0.0) keepMost(hidden, front.drift, share);
  });
  return hidden;
}

HiddenShares hiddenShares(const Viewpoint& viewpoint, const Lineup& lineup,
                          const SightLimits& limits) {
  HiddenShares shares;
  for (const Standing& rear : lineup.plants()) {
    if (rear.seen.height + limits.tallerBy > lineup.tallest()) continue;
    const auto sight = viewpoint.sightOf(rear.at, limits);
    if (!sight) continue;
    for (const auto& [front, share] : hiddenOf(rear, lineup, *sight, limits))
      shares[{rear.drift, front}] += share;
  }
  return shares;
}

Finding findingFor(const DriftPair& pair, double share, double most, const Viewpoint& viewpoint) {
  const auto& [rear, front] = pair;
  Finding finding;
  finding.check = CheckId::HeightOrder;
  finding.severity =
      rear->drift->existing() && front->drift->existing() ? Severity::Hint : Severity::Caution;
  finding.subjects = {refTo(rear->drift->id), refTo(front->drift->id)};
  finding.place = {placeAround(*rear), placeAround(*front)};
  finding.measured = share;
  finding.required = most;
  finding.unit = Quantity::Share;
  finding.thresholdId = "hidden_share";
  finding.about = viewpoint.name();
  return finding;
}

}  // namespace

std::vector<Finding> checkHeightOrder(const Survey& survey, const SurveyedBed& bed) {
  constexpr double kRounding = 1e-9;
  const SightLimits limits = sightLimits(survey);
  const double most = survey.limit("hidden_share");
  std::vector<Finding> findings;
  const Lineup lineup(bed);
  for (const Viewpoint& viewpoint : viewpointsOf(*bed.bed)) {
    for (const auto& [pair, sum] : hiddenShares(viewpoint, lineup, limits)) {
      const double share = sum / static_cast<double>(pair.first->drift->plants.size());
      if (share > most + kRounding) findings.push_back(findingFor(pair, share, most, viewpoint));
    }
  }
  return findings;
}

}  // namespace tussock
