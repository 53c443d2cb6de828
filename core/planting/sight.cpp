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

// The farthest crossing: people stand outside the whole bed, not in a bay of its edge.
double distanceOut(const Bed& bed, Point plant, Point towards) {
  const Ring& ring = bed.outline.outer;
  double farthest = 0.0;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
    if (const auto along = crossing(plant, towards, ring[j], ring[i]))
      farthest = std::max(farthest, *along);
  return farthest;
}

}  // namespace

bool isSeeThrough(const Species& species) {
  return species.habit == Habit::Grass || species.flowerForm == FlowerForm::Plume ||
         species.flowerForm == FlowerForm::Spire;
}

// The next of several sides of a house is a right angle away, and looks along the same edge.
bool Viewpoint::nearerAcross(Point plant, Point towards, double toEdge) const {
  constexpr double kAcross = -0.2;  // cosine of the angle between two sides, a good right angle
  return std::any_of(bed_.viewing.from.begin(), bed_.viewing.from.end(), [&](Angle side) {
    const Point other = directionOf(side);
    return dot(other, towards) < kAcross && distanceOut(bed_, plant, other) < toEdge;
  });
}

std::optional<Sight> Viewpoint::sightOf(Point plant, const SightLimits& limits) const {
  Sight sight;
  if (side_) {
    sight.towards = directionOf(*side_);
    sight.toEdge = distanceOut(bed_, plant, sight.towards);
    if (nearerAcross(plant, sight.towards, sight.toEdge)) return std::nullopt;
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
