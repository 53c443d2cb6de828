// SPDX-License-Identifier: MIT
#include <functional>

#include "core/checks/checks.h"
#include "core/geometry/tolerance.h"

namespace tussock {

namespace {

// Something no plant can stand in, and how far from it a point is (negative inside), in metres.
struct Obstacle {
  ObjectRef ref;
  Box box;
  std::function<double(Point)> distanceTo;
};

Obstacle areaObstacle(ObjectRef ref, const Polygon& outline) {
  return {ref, boundsOf(outline), [&outline](Point p) {
            const double d = distanceToEdge(outline, p);
            return contains(outline, p) ? -d : d;
          }};
}

Obstacle roundObstacle(ObjectRef ref, Point centre, Length radius) {
  return {ref, Box{centre, centre}.grown(radius.metres()),
          [centre, radius](Point p) { return distance(centre, p) - radius.metres(); }};
}

Obstacle lineObstacle(ObjectRef ref, const Polyline& line, Length thickness) {
  const double half = thickness.metres() / 2.0;
  return {ref, boundsOf(line).grown(half), [&line, half](Point p) {
            double nearest = 1e300;
            for (std::size_t i = 1; i < line.size(); ++i)
              nearest = std::min(nearest, distanceToSegment(p, line[i - 1], line[i]));
            return nearest - half;
          }};
}

// The obstacles refer to the yard's shapes.
std::vector<Obstacle> obstaclesOf(const Yard& yard) {
  std::vector<Obstacle> all;
  for (const Paving& paving : yard.pavings)
    all.push_back(areaObstacle(refTo(paving.id), paving.outline));
  for (const Building& building : yard.buildings)
    all.push_back(areaObstacle(refTo(building.id), building.footprint));
  for (const Barrier& barrier : yard.barriers)
    all.push_back(barrier.footprint.empty()
                      ? lineObstacle(refTo(barrier.id), barrier.line, barrier.thickness)
                      : areaObstacle(refTo(barrier.id), barrier.footprint));
  for (const Tree& tree : yard.trees)
    all.push_back(roundObstacle(refTo(tree.id), tree.at, tree.trunkDiameter * 0.5));
  for (const SteppingPlace& step : yard.steppingPlaces)
    all.push_back(roundObstacle(refTo(step.id), step.at, step.radius));
  return all;
}

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
