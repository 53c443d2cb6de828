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

// What is asked of places, looked up once for all plants that are judged.
class PlaceRules {
 public:
  explicit PlaceRules(const Survey& survey)
      : survey_(survey),
        limits_(survey),
        slope_(survey.yard.settings),
        clearance_(Length::metres(survey.limit("obstacle_clearance"))),
        obstacles_(obstaclesOf(survey.yard)) {}

  // Those a plant breaks there.
  [[nodiscard]] std::vector<Finding> broken(const Moved& moved) const {
    std::vector<Finding> findings;
    addObstacles(findings, moved);
    addSetBack(findings, moved);
    addCrowding(findings, moved);
    return findings;
  }

 private:
  void addCrowding(std::vector<Finding>& findings, const Moved& moved) const {
    for (const SurveyedBed& bed : survey_.beds)
      for (const SurveyedDrift& other : bed.drifts) {
        // Where the whole drift is moved, the survey has it where it was.
        if (other.drift->id == moved.drift->id && other.drift != moved.drift) continue;
        const double reach = limits_.reach(std::max(other.drift->spacing, moved.drift->spacing));
        if (!other.box.grown(reach).contains(moved.to)) continue;
        if (auto finding = crowdingWith(limits_, slope_, *other.drift, moved))
          findings.push_back(std::move(*finding));
      }
  }

  void addSetBack(std::vector<Finding>& findings, const Moved& moved) const {
    const Bed* bed = survey_.yard.beds.find(moved.drift->bed);
    if (bed == nullptr) return;
    const Length required = requiredSetBack(survey_, *bed, *moved.drift);
    const Length depth = depthInside(slope_, slope_.onGround(bed->outline), moved.to);
    if (atLeast(depth, required)) return;
    Finding finding = findingOf(CheckId::SetBack, moved, depth, required);
    finding.subjects.push_back(refTo(bed->id));
    finding.thresholdId = "edge_share";
    findings.push_back(std::move(finding));
  }

  void addObstacles(std::vector<Finding>& findings, const Moved& moved) const {
    for (const Obstacle& obstacle : obstacles_) {
      if (!obstacle.box.grown(clearance_.metres()).contains(moved.to)) continue;
      const Length away = Length::metres(obstacle.distanceTo(moved.to));
      if (atLeast(away, clearance_)) continue;
      Finding finding = findingOf(CheckId::Obstructed, moved, away, clearance_);
      finding.subjects.push_back(obstacle.ref);
      finding.thresholdId = "obstacle_clearance";
      findings.push_back(std::move(finding));
    }
  }

  const Survey& survey_;
  SpacingLimits limits_;
  Slope slope_;
  Length clearance_;
  std::vector<Obstacle> obstacles_;
};

// Joins what one plant breaks to what others of its drift do.
void join(std::vector<Finding>& all, Finding one) {
  const auto same = [&](const Finding& finding) {
    return finding.check == one.check && finding.subjects == one.subjects;
  };
  const auto known = std::find_if(all.begin(), all.end(), same);
  if (known == all.end()) return all.push_back(std::move(one));
  known->plants.push_back(one.plants.front());
  if (one.measured >= known->measured) return;
  known->measured = one.measured;
  known->place = std::move(one.place);
}

template <class Concerned>
std::vector<Finding> joined(const Survey& survey, const Drift& drift, const Concerned& concerned) {
  const PlaceRules rules(survey);
  std::vector<Finding> all;
  for (const Plant& plant : drift.plants)
    if (concerned(plant.id))
      for (Finding& finding : rules.broken({&drift, plant.id, plant.at}))
        join(all, std::move(finding));
  return all;
}

// Plants that stand apart from the most of their drift, whichever of them were moved.
void addApart(std::vector<Finding>& findings, const Survey& survey, const Drift& drift) {
  if (auto apart = findingOfPieces(survey.yard.settings, drift))
    findings.push_back(std::move(*apart));
}

}  // namespace

std::vector<Finding> findingsAt(const Survey& survey, Id<Drift> id, Id<Plant> plant, Point to) {
  const Drift* drift = survey.yard.drifts.find(id);
  if (drift == nullptr) return {};
  std::vector<Finding> findings = PlaceRules(survey).broken({drift, plant, to});
  Drift moved = *drift;
  for (Plant& one : moved.plants)
    if (one.id == plant) one.at = to;
  addApart(findings, survey, moved);
  return findings;
}

std::vector<Finding> findingsAt(const Survey& survey, const Drift& moved) {
  return joined(survey, moved, [](Id<Plant>) { return true; });
}

std::vector<Finding> findingsAt(const Survey& survey, Id<Drift> id,
                                const std::vector<Id<Plant>>& plants) {
  const Drift* drift = survey.yard.drifts.find(id);
  if (drift == nullptr) return {};
  std::vector<Finding> findings = joined(survey, *drift, [&](Id<Plant> plant) {
    return std::find(plants.begin(), plants.end(), plant) != plants.end();
  });
  addApart(findings, survey, *drift);
  return findings;
}

}  // namespace tussock
