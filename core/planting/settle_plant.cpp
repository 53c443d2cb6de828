// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/planting/drift_plants.h"
#include "core/planting/edit_drift.h"
#include "core/planting/free_spots.h"
#include "core/planting/patterns.h"

namespace tussock {

namespace {

std::optional<Point> nearestFree(const FreeSpots& spots, Point from, double spacing) {
  if (spots.fits(from)) return from;
  constexpr int kRings = 80;
  for (int ring = 1; ring <= kRings; ++ring) {
    const double radius = spacing * ring / 10.0;
    const int steps = 12 * std::min(ring, 6);
    for (int i = 0; i < steps; ++i) {
      const double turn = 2.0 * std::numbers::pi * i / steps;
      const Point p = from + Point{std::cos(turn), std::sin(turn)} * radius;
      if (spots.fits(p)) return p;
    }
  }
  return std::nullopt;
}

}  // namespace

DriftEdit settlePlant(const Yard& yard, Id<Drift> id, Id<Plant> plant) {
  const Drift* drift = yard.drifts.find(id);
  if (drift == nullptr) return {{}, id, 0, 0};
  const auto moved = std::find_if(drift->plants.begin(), drift->plants.end(),
                                  [&](const Plant& p) { return p.id == plant; });
  if (moved == drift->plants.end()) return {{}, id, 0, 0};
  GrowRequest request = requestFor(*drift, 1);
  request.at = moved->at;
  const double s = drift->spacing.metres();
  const Ground ground(yard, request, 10.0 * s);
  if (ground.empty()) return {{}, id, 0, 0};
  FreeSpots spots(ground, s * (isStrict(drift->pattern) ? 1.0 : Packing().least));
  for (const Plant& other : drift->plants)
    if (other.id != plant) spots.take(ground.slope().onGround(other.at));
  const auto place = nearestFree(spots, ground.slope().onGround(moved->at), s);
  if (!place) return {{}, id, 0, 0};
  return nudgePlant(yard, id, plant, ground.slope().onPlan(*place));
}

}  // namespace tussock
