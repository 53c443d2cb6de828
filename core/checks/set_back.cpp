// SPDX-License-Identifier: MIT
#include "core/checks/checks.h"
#include "core/checks/plant_rules.h"
#include "core/geometry/tolerance.h"

namespace tussock {

namespace {

// The plants that stand too near, and the worst of them.
struct Shortfall {
  Length measured = Length::metres(1e300);
  std::vector<Id<Plant>> plants;
  Box place;
};

Shortfall shortfallOf(const Slope& slope, const Polygon& outline, const Drift& drift,
                      Length required) {
  Shortfall shortfall;
  for (const Plant& plant : drift.plants) {
    const Length depth = depthInside(slope, outline, plant.at);
    if (atLeast(depth, required)) continue;
    shortfall.measured = std::min(shortfall.measured, depth);
    shortfall.plants.push_back(plant.id);
    shortfall.place.include(plant.at);
  }
  return shortfall;
}

Severity severityOf(const Drift& drift, Length measured) {
  if (drift.existing()) return Severity::Hint;
  return atLeast(measured, Length()) ? Severity::Caution : Severity::Alert;
}

}  // namespace

std::vector<Finding> checkSetBack(const Survey& survey, const SurveyedBed& bed) {
  const Slope slope(survey.yard.settings);
  const Polygon outline = slope.onGround(bed.bed->outline);
  std::vector<Finding> findings;
  for (const SurveyedDrift& surveyed : bed.drifts) {
    const Drift& drift = *surveyed.drift;
    const Length required = requiredSetBack(survey, *bed.bed, drift);
    Shortfall shortfall = shortfallOf(slope, outline, drift, required);
    if (shortfall.plants.empty()) continue;
    Finding finding;
    finding.check = CheckId::SetBack;
    finding.severity = severityOf(drift, shortfall.measured);
    finding.subjects = {refTo(drift.id), refTo(bed.bed->id)};
    finding.plants = std::move(shortfall.plants);
    finding.place = {placeAround(shortfall.place, drift.spacing * 0.5)};
    finding.measured = shortfall.measured.metres();
    finding.required = required.metres();
    finding.thresholdId = "edge_share";
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace tussock
