// SPDX-License-Identifier: MIT
#include "core/checks/checks.h"
#include "core/checks/plant_rules.h"
#include "core/geometry/tolerance.h"

namespace tussock {

namespace {

std::optional<Finding> findingFor(const SurveyedDrift& surveyed, const Obstacle& obstacle,
                                  Length clearance) {
  Finding finding;
  Length worst = Length::metres(1e300);
  Box place;
  for (const Plant& plant : surveyed.drift->plants) {
    const Length away = Length::metres(obstacle.distanceTo(plant.at));
    if (atLeast(away, clearance)) continue;
    worst = std::min(worst, away);
    finding.plants.push_back(plant.id);
    place.include(plant.at);
  }
  if (finding.plants.empty()) return std::nullopt;
  finding.check = CheckId::Obstructed;
  finding.severity = surveyed.drift->existing() ? Severity::Caution : Severity::Alert;
  finding.subjects = {refTo(surveyed.drift->id), obstacle.ref};
  finding.place = {placeAround(place, surveyed.drift->spacing * 0.5)};
  finding.measured = worst.metres();
  finding.required = clearance.metres();
  finding.thresholdId = "obstacle_clearance";
  return finding;
}

}  // namespace

std::vector<Finding> checkObstructed(const Survey& survey, const SurveyedBed& bed) {
  const Length clearance = Length::metres(survey.limit("obstacle_clearance"));
  std::vector<Finding> findings;
  for (const Obstacle& obstacle : obstaclesOf(survey.yard)) {
    const Box reach = obstacle.box.grown(clearance.metres());
    for (const SurveyedDrift& drift : bed.drifts)
      if (drift.box.overlaps(reach))
        if (auto finding = findingFor(drift, obstacle, clearance))
          findings.push_back(std::move(*finding));
  }
  return findings;
}

}  // namespace tussock
