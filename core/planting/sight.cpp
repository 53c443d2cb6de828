// SPDX-License-Identifier: MIT
#include "core/planting/sight.h"

#include <algorithm>
#include <cmath>

namespace tussock {

namespace {

// How far along the ray from `p` the segment a-b is crossed; nothing when it is not.
std::optional<double> crossing(Point p, Point towards, Point a, Point b) {
  const double sideA = cross(towards, a - p), sideB = cross(towards, b - p);
  if ((sideA > 0.0) == (sideB > 0.0)) return std::nullopt;
  const double t = sideA / (sideA - sideB);
  return dot(towards, a + (b - a) * t - p);
}

}  // namespace

bool isSeeThrough(const Species& species) {
  return species.habit == Habit::Grass || species.flowerForm == FlowerForm::Plume ||
         species.flowerForm == FlowerForm::Spire;
}

// The farthest crossing: people stand outside the whole bed, not in a bay of its edge.
double Viewpoint::distanceOut(Point plant, Point towards) const {
  const Ring& ring = bed_.outline.outer;
  double farthest = 0.0;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
    if (const auto along = crossing(plant, towards, ring[j], ring[i]))
      farthest = std::max(farthest, *along);
  return farthest;
}

Sight Viewpoint::sightOf(Point plant, const SightLimits& limits) const {
  Sight sight;
  if (side_) {
    sight.towards = directionOf(*side_);
    sight.toEdge = distanceOut(plant, sight.towards);
  } else {
    const Point edge = nearestOnEdge(bed_.outline, plant);
    sight.toEdge = distance(edge, plant);
    if (sight.toEdge > 0.0) sight.towards = (edge - plant) * (1.0 / sight.toEdge);
  }
  sight.toEyes = sight.toEdge + limits.viewingDistance;
  return sight;
}

std::string Viewpoint::name() const {
  return side_ ? formatViewing({false, {*side_}}) : formatViewing({true, {}});
}

std::vector<Viewpoint> viewpointsOf(const Bed& bed) {
  if (bed.viewing.allRound) return {Viewpoint(bed, std::nullopt)};
  std::vector<Viewpoint> result;
  const std::vector<Angle>& sides = bed.viewing.from;
  for (auto side = sides.begin(); side != sides.end(); ++side)
    if (std::find(sides.begin(), side, *side) == side) result.emplace_back(bed, *side);
  return result;
}

double hiddenShare(const SightOutline& rear, const SightOutline& front, Point step,
                   const Sight& sight, const SightLimits& limits) {
  if (front.height < rear.height + limits.tallerBy) return 0.0;
  const double ahead = dot(step, sight.towards);
  if (ahead <= 0.0 || ahead >= sight.toEyes || ahead > limits.hidesWithin) return 0.0;
  if (std::abs(cross(step, sight.towards)) > front.halfSpread) return 0.0;
  const double slope = (front.height - limits.eyeHeight) / (sight.toEyes - ahead);
  const double hiddenTo = limits.eyeHeight + slope * sight.toEyes;
  const double share = std::clamp(hiddenTo / rear.height, 0.0, 1.0);
  return front.seeThrough ? share * limits.seeThrough : share;
}

}  // namespace tussock
