// SPDX-License-Identifier: MIT
#include "core/planting/room_beside.h"

#include <algorithm>

#include "core/planting/enlarge.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"
#include "core/planting/plant_count.h"
#include "core/planting/slope.h"

namespace tussock {

namespace {

double leastBetween(const KeptDrift& kept, const Drift& other) {
  if (kept.layer != other.layer) return kBetweenLayers.metres();
  return kLooseSpacing * 0.5 * (kept.spacing + other.spacing).metres();
}

bool isClear(const Slope& slope, Point p, const KeptDrift& kept,
             const std::vector<const Drift*>& staying) {
  constexpr double kRounding = 1e-6;
  return std::all_of(staying.begin(), staying.end(), [&](const Drift* other) {
    const double least = leastBetween(kept, *other) - kRounding;
    return std::all_of(other->plants.begin(), other->plants.end(),
                       [&](const Plant& plant) { return slope.distance(plant.at, p) >= least; });
  });
}

}  // namespace

std::vector<Point> roomBeside(const Settings& settings, const KeptDrift& kept,
                              const std::vector<const Drift*>& staying) {
  const Slope slope(settings);
  KeptDrift left = kept;
  std::erase_if(left.places, [&](Point p) { return !isClear(slope, p, kept, staying); });
  const bool whole = left.places.size() == kept.places.size();
  if (whole || left.places.empty() || !isOnePiece(kept.pattern)) return left.places;
  left.places = largestPiece(left.places, kept.spacing);
  return fewerPlaces(left, oddCount(static_cast<int>(left.places.size())));
}

}  // namespace tussock
