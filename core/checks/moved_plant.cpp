// SPDX-License-Identifier: MIT
#include "core/checks/moved_plant.h"

#include <algorithm>
#include <optional>

#include "core/geometry/tolerance.h"

namespace tussock {

namespace {

struct Moved {
  const Drift* drift;
  Id<Plant> plant;
  Point to;
};

Finding findingOf(CheckId check, const Moved& moved, Length measured, Length required) {
  Finding finding;
  finding.check = check;
  finding.subjects = {refTo(moved.drift->id)};
  finding.plants = {moved.plant};
  finding.place = {placeAround(Box{moved.to, moved.to}, moved.drift->spacing * 0.5)};
  finding.measured = measured.metres();
  finding.required = required.metres();
  return finding;
}

// The nearest plant of the other drift that stands too near.
std::optional<Finding> crowdingWith(const SpacingLimits& limits, const Slope& slope,
                                    const Drift& other, const Moved& moved) {
  const Length required = limits.required(*moved.drift, other);
  double nearest = 1e300;
  for (const Plant& plant : other.plants)
    if (plant.id != moved.plant) nearest = std::min(nearest, slope.distance(plant.at, moved.to));
  if (atLeast(Length::metres(nearest), required)) return std::nullopt;
  Finding finding = findingOf(CheckId::Spacing, moved, Length::metres(nearest), required);
  if (other.id != moved.drift->id) finding.subjects.push_back(refTo(other.id));
  finding.thresholdId = other.layer == moved.drift->layer ? "spacing_factor" : "between_layers";
  return finding;
}

void addCrowding(std::vector<Finding>& findings, const Survey& survey, const Moved& moved) {
  const SpacingLimits limits(survey);
  const Slope slope(survey.yard.settings);
  for (const SurveyedBed& bed : survey.beds)
    for (const SurveyedDrift& other : bed.drifts) {
      const double reach = limits.reach(std::max(other.drift->spacing, moved.drift->spacing));
      if (!other.box.grown(reach).contains(moved.to)) continue;
      if (auto finding = crowdingWith(limits, slope, *other.drift, moved))
        findings.push_back(std::move(*finding));
    }
}

void addSetBack(std::vector<Finding>& findings, const Survey& survey, const Moved& moved) {
  const Bed* bed = survey.yard.beds.find(moved.drift->bed);
  if (bed == nullptr) return;
  const Slope slope(survey.yard.settings);
  const Length required = requiredSetBack(survey, *bed, *moved.drift);
  const Length depth = depthInside(slope, slope.onGround(bed->outline), moved.to);
  if (atLeast(depth, required)) return;
  Finding finding = findingOf(CheckId::SetBack, moved, depth, required);
  finding.subjects.push_back(refTo(bed->id));
  finding.thresholdId = "edge_share";
  findings.push_back(std::move(finding));
}

void addObstacles(std::vector<Finding>& findings, const Survey& survey, const Moved& moved) {
  const Length clearance = Length::metres(survey.limit("obstacle_clearance"));
  for (const Obstacle& obstacle : obstaclesOf(survey.yard)) {
    if (!obstacle.box.grown(clearance.metres()).contains(moved.to)) continue;
    const Length away = Length::metres(obstacle.distanceTo(moved.to));
    if (atLeast(away, clearance)) continue;
    Finding finding = findingOf(CheckId::Obstructed, moved, away, clearance);
    finding.subjects.push_back(obstacle.ref);
    finding.thresholdId = "obstacle_clearance";
    findings.push_back(std::move(finding));
  }
}

}  // namespace

std::vector<Finding> findingsAt(const Survey& survey, Id<Drift> id, Id<Plant> plant, Point to) {
  const Drift* drift = survey.yard.drifts.find(id);
  if (drift == nullptr) return {};
  const Moved moved{drift, plant, to};
  std::vector<Finding> findings;
  addObstacles(findings, survey, moved);
  addSetBack(findings, survey, moved);
  addCrowding(findings, survey, moved);
  return findings;
}

}  // namespace tussock
