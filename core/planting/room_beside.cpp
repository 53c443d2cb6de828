// SPDX-License-Identifier: MIT
#include "core/planting/room_beside.h"

#include <algorithm>

#include "core/planting/enlarge.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"
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

std::vector<Point> oddPiece(const KeptDrift& kept, std::vector<Point> places) {
  places = largestPiece(places, kept.spacing);
  if (places.size() % 2 == 1 || places.empty()) return places;
  GrowRequest request;
  request.spacing = kept.spacing;
  request.count = static_cast<int>(places.size()) - 1;
  for (const Point p : places) request.at += p * (1.0 / static_cast<double>(places.size()));
  request.axis = kept.axis;
  request.stretch = kept.stretch;
  std::vector<Point> odd;
  for (const std::size_t i : shrunk(request, places)) odd.push_back(places[i]);
  return odd;
}

}  // namespace

std::vector<Point> roomBeside(const Settings& settings, const KeptDrift& kept,
                              const std::vector<const Drift*>& staying) {
  const Slope slope(settings);
  std::vector<Point> places = kept.places;
  std::erase_if(places, [&](Point p) { return !isClear(slope, p, kept, staying); });
  if (places.size() == kept.places.size() || !isOnePiece(kept.pattern)) return places;
  return oddPiece(kept, std::move(places));
}

}  // namespace tussock
