// SPDX-License-Identifier: MIT
#include "core/checks/plant_rules.h"

#include <algorithm>

#include "core/planting/patterns.h"

namespace tussock {

namespace {

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

}  // namespace

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

SpacingLimits::SpacingLimits(const Survey& survey)
    : factor(survey.limit("spacing_factor")),
      betweenLayers(Length::metres(survey.limit("between_layers"))) {}

Length SpacingLimits::required(const Drift& a, const Drift& b) const {
  if (a.layer != b.layer) return betweenLayers;
  const double share = a.id == b.id && isStrict(a.pattern) ? std::max(1.0, factor) : factor;
  return (a.spacing + b.spacing) * (share / 2.0);
}

double SpacingLimits::reach(Length largestSpacing) const {
  return std::max((largestSpacing * std::max(1.0, factor)).metres(), betweenLayers.metres());
}

Length requiredSetBack(const Survey& survey, const Bed& bed, const Drift& drift) {
  return std::max(bed.setback.value_or(Length()), drift.spacing * survey.limit("edge_share"));
}

Length depthInside(const Slope& slope, const Polygon& groundOutline, Point plan) {
  const Point p = slope.onGround(plan);
  const double toEdge = distanceToEdge(groundOutline, p);
  return Length::metres(contains(groundOutline, p) ? toEdge : -toEdge);
}

}  // namespace tussock
