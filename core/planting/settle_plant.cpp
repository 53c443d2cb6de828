// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

#include "core/planting/drift_plants.h"
#include "core/planting/edit_drift.h"
#include "core/planting/free_spots.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"

namespace tussock {

namespace {

template <class Suits>
std::optional<Point> nearest(const Suits& suits, Point from, double spacing) {
  if (suits(from)) return from;
  constexpr int kRings = 80;
  for (int ring = 1; ring <= kRings; ++ring) {
    const double radius = spacing * ring / 10.0;
    const int steps = 12 * std::min(ring, 6);
    for (int i = 0; i < steps; ++i) {
      const double turn = 2.0 * std::numbers::pi * i / steps;
      const Point p = from + Point{std::cos(turn), std::sin(turn)} * radius;
      if (suits(p)) return p;
    }
  }
  return std::nullopt;
}

// The plant that is settled and, on the plan, the others of its drift.
struct Settled {
  const Yard& yard;
  const Drift& drift;
  Point at;
  std::vector<Point> others;
  std::vector<Point> most;  // of the others, those that are one piece
};

// On the plan. Nothing where there is no free place near `from`, or none that also makes the drift
// one piece, or touches most of it, when that is asked.
enum class Asked { Free, BesideMost, OnePiece };
std::optional<Point> placeFor(const Settled& plant, Point from, Asked asked) {
  const double s = plant.drift.spacing.metres();
  GrowRequest request = requestFor(plant.drift, 1);
  request.at = from;
  const Ground ground(plant.yard, request, 10.0 * s);
  if (ground.empty()) return std::nullopt;
  FreeSpots spots(ground, s * (isStrict(plant.drift.pattern) ? 1.0 : Packing().least));
  const auto onGround = [&](std::vector<Point> places) {
    for (Point& place : places) place = ground.slope().onGround(place);
    return places;
  };
  const std::vector<Point> own = onGround(plant.others), most = onGround(plant.most);
  for (const Point other : own) spots.take(other);
  const auto suits = [&](Point p) {
    if (!spots.fits(p)) return false;
    if (asked == Asked::Free) return true;
    const bool beside = std::any_of(most.begin(), most.end(),
                                    [&](Point other) { return distance(p, other) <= kTouch * s; });
    if (!beside || asked == Asked::BesideMost) return beside;
    std::vector<Point> all = own;
    all.push_back(p);
    return inOnePiece(all, plant.drift.spacing);
  };
  const auto place = nearest(suits, ground.slope().onGround(from), s);
  if (!place) return std::nullopt;
  return ground.slope().onPlan(*place);
}

// Where a plant that was taken far off meets its drift again: a spacing from the nearest of the
// others, towards it.
Point whereItMeets(const Settled& plant) {
  const Point near = *std::min_element(plant.most.begin(), plant.most.end(), [&](Point a, Point b) {
    return distance(a, plant.at) < distance(b, plant.at);
  });
  const double away = distance(near, plant.at), s = plant.drift.spacing.metres();
  return away <= s ? plant.at : near + (plant.at - near) * (s / away);
}

// With the others of its drift if it can be; else wherever it is free.
std::optional<Point> placeFor(const Settled& plant) {
  if (isOnePiece(plant.drift.pattern) && !plant.others.empty())
    for (const Asked asked : {Asked::OnePiece, Asked::BesideMost})
      if (const auto place = placeFor(plant, whereItMeets(plant), asked)) return place;
  return placeFor(plant, plant.at, Asked::Free);
}

}  // namespace

DriftEdit settlePlant(const Yard& yard, Id<Drift> id, Id<Plant> plant) {
  const Drift* drift = yard.drifts.find(id);
  if (drift == nullptr) return {{}, id, 0, 0};
  const auto moved = std::find_if(drift->plants.begin(), drift->plants.end(),
                                  [&](const Plant& p) { return p.id == plant; });
  if (moved == drift->plants.end()) return {{}, id, 0, 0};
  Settled settled{yard, *drift, moved->at, {}, {}};
  for (const Plant& other : drift->plants)
    if (other.id != plant) settled.others.push_back(other.at);
  settled.most = largestPiece(settled.others, drift->spacing);
  const auto place = placeFor(settled);
  if (!place) return {{}, id, 0, 0};
  return nudgePlant(yard, id, plant, *place);
}

}  // namespace tussock
