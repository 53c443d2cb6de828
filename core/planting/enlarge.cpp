// SPDX-License-Identifier: MIT
#include "core/planting/enlarge.h"

#include <algorithm>
#include <numeric>

#include "core/planting/front.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"

namespace tussock {

namespace {

std::vector<Point> placesOf(const std::vector<std::size_t>& kept,
                            const std::vector<Point>& standing, std::size_t without) {
  std::vector<Point> places;
  for (const std::size_t i : kept)
    if (i != without) places.push_back(standing[i]);
  return places;
}

std::vector<Point> staggeredPlaces(const Ground& ground, const GrowRequest& request,
                                   const std::vector<Point>& standing) {
  Front front(ground, request.spacing, figureAsked(request), packingFor(request.count));
  for (const Point p : standing) front.take(p);
  front.growTo(request.count);
  return front.places();
}

std::vector<Point> morePlaces(const Ground& ground, const GrowRequest& request,
                              const std::vector<Point>& standing) {
  switch (request.pattern) {
    case Pattern::Triangular:
    case Pattern::Square:
      return strictPlaces(ground, request, standing, figureAsked(request));
    case Pattern::Single:
      return singlePlaces(ground, request, standing, figureAsked(request));
    case Pattern::Matrix:
      return matrixPlaces(ground, request, standing);
    case Pattern::Staggered:
      break;
  }
  return staggeredPlaces(ground, request, standing);
}

}  // namespace

std::vector<Point> enlarged(const Yard& yard, const GrowRequest& wanted,
                            std::vector<Point> standing) {
  GrowRequest request = wanted;
  request.count = countTaken(wanted.count, wanted.countAs);
  const Ground ground(yard, request, reachOf(request));
  if (ground.empty()) return standing;
  std::vector<Point> onGroundStanding;
  onGroundStanding.reserve(standing.size());
  for (const Point p : standing) onGroundStanding.push_back(ground.slope().onGround(p));
  const auto places = morePlaces(ground, onGround(request, ground.slope()), onGroundStanding);
  const std::size_t stood = standing.size();
  for (std::size_t i = stood; i < places.size(); ++i)
    standing.push_back(ground.slope().onPlan(places[i]));
  if (standing.size() > stood) keepCount(standing, request.count);
  return standing;
}

std::vector<std::size_t> shrunk(const GrowRequest& request, const std::vector<Point>& standing) {
  const DriftFigure figure = figureAsked(request);
  std::vector<std::size_t> kept(standing.size());
  std::iota(kept.begin(), kept.end(), std::size_t{0});
  std::stable_sort(kept.begin(), kept.end(), [&](std::size_t a, std::size_t b) {
    return figure.distanceTo(standing[a]) < figure.distanceTo(standing[b]);
  });
  while (static_cast<int>(kept.size()) > request.count) {
    // The outermost whose leaving does not part the drift; in any case the outermost.
    auto leaving = std::find_if(kept.rbegin(), kept.rend(), [&](std::size_t i) {
      return !isOnePiece(request.pattern) ||
             inOnePiece(placesOf(kept, standing, i), request.spacing);
    });
    if (leaving == kept.rend()) leaving = kept.rbegin();
    kept.erase(std::next(leaving).base());
  }
  return kept;
}

std::vector<Point> fewerPlaces(const KeptDrift& drift, int count) {
  GrowRequest request;
  request.spacing = drift.spacing;
  request.count = count;
  for (const Point p : drift.places)
    request.at += p * (1.0 / static_cast<double>(drift.places.size()));
  request.axis = drift.axis;
  request.stretch = drift.stretch;
  std::vector<Point> fewer;
  for (const std::size_t i : shrunk(request, drift.places)) fewer.push_back(drift.places[i]);
  return fewer;
}

}  // namespace tussock
