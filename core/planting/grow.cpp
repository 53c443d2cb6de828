// SPDX-License-Identifier: MIT
#include "core/planting/grow.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/geometry/lattice.h"
#include "core/geometry/overlay.h"
#include "core/planting/front.h"
#include "core/planting/one_piece.h"
#include "core/planting/patterns.h"
#include "core/planting/relax.h"

namespace tussock {

namespace {

// The first place: the drop, else the nearest free place within eight spacings of it.
std::optional<Point> firstPlace(const Front& front, Point drop, double spacing) {
  if (front.fits(drop)) return drop;
  constexpr int kRings = 48;
  for (int ring = 1; ring <= kRings; ++ring) {
    const double radius = spacing * ring / 6.0;
    const int steps = 6 * ring;
    for (int i = 0; i < steps; ++i) {
      const double turn = 2.0 * std::numbers::pi * i / steps;
      const Point p = drop + Point{std::cos(turn), std::sin(turn)} * radius;
      if (front.fits(p)) return p;
    }
  }
  return std::nullopt;
}

// Where a drift may begin: at the drop, and snug in the pockets beside neighbours and edges.
std::vector<Point> beginnings(const Ground& ground, const GrowRequest& request, Angle axis) {
  constexpr std::size_t kMost = 5;
  const double s = request.spacing.metres();
  const Front front(ground, request.spacing, {request.at, axis, request.stretch},
                    packingFor(request.count));
  std::vector<Point> result;
  if (const auto first = firstPlace(front, request.at, s)) result.push_back(*first);
  if (result.empty() || !isUsual(request.count)) return result;
  // Beside the drop, so that two rows can lie either side of it.
  const Point across = rotated({0.0, 0.45 * s}, axis);
  if (front.fits(result.front() + across)) result.push_back(result.front() + across);
  for (const Point p : front.pockets(result.front(), 1.2 * s)) {
    const bool fresh = std::none_of(result.begin(), result.end(),
                                    [&](Point q) { return distance(p, q) < 0.2 * s; });
    if (fresh) result.push_back(p);
    if (result.size() >= kMost) break;
  }
  return result;
}

struct Attempt {
  std::vector<Point> places;
  double cost = std::numeric_limits<double>::infinity();
};

// How snug the places lie: neighbours and edges that they close up with, per place.
double snugness(const Ground& ground, const std::vector<Point>& places) {
  constexpr double kClose = 1.08;  // of the usual distance
  double sum = 0.0;
  for (const Point p : places) {
    for (const Neighbour& n : ground.neighbours())
      if (distance(p, n.at) < kClose * n.usual) sum += 1.0;
    for (const Border& b : ground.borders())
      if (distanceToSegment(p, b.from, b.to) < kClose * b.least) sum += 2.0;
  }
  return sum / static_cast<double>(places.size());
}

// Lower is better: proportions as asked, the middle near the drop, closed up with what is there.
// The weights are our own judgement, tried on beds filled drift by drift.
double costOf(const Ground& ground, const std::vector<Point>& places, const GrowRequest& request) {
  constexpr double kProportions = 1.5;
  constexpr double kSnugness = 1.5;
  if (places.empty()) return std::numeric_limits<double>::infinity();
  Point middle;
  for (const Point p : places) middle += p * (1.0 / static_cast<double>(places.size()));
  const double size = std::sqrt(triangularGround(request.spacing).squareMetres() *
                                static_cast<double>(places.size()));
  const double off = distance(middle, request.at) / size;
  const double cost = off - kSnugness * snugness(ground, places);
  if (places.size() < 5) return cost;
  const OrientedRectangle box = smallestRectangle(places, request.spacing / 2.0);
  return cost + kProportions * std::abs(std::log(box.length / box.width / request.stretch));
}

bool better(const Attempt& a, const Attempt& b) {
  if (a.places.size() != b.places.size()) return a.places.size() > b.places.size();
  return a.cost < b.cost;
}

std::vector<Point> attempt(const Ground& ground, const GrowRequest& request, Point beginning,
                           const DriftFigure& figure, const Packing& packing) {
  Front front(ground, request.spacing, figure, packing);
  front.take(beginning);
  front.growTo(request.count);
  std::vector<Point> places = front.places();
  keepCount(places, request.count);
  return places;
}

struct Way {
  double stretch;  // over what is asked: a figure of few plants comes out shorter than its metric
  bool lengthens;
};
constexpr std::array<Way, 9> kWays{{{1.0, false},
                                    {1.0, true},
                                    {1.35, false},
                                    {1.35, true},
                                    {1.8, false},
                                    {1.8, true},
                                    {2.4, false},
                                    {2.4, true},
                                    {3.2, true}}};

std::vector<Point> bestOf(const Ground& ground, const GrowRequest& request, Angle axis) {
  const std::size_t ways = isUsual(request.count) ? kWays.size() : 1;
  Packing packing = packingFor(request.count);
  constexpr double kThinEnds = 0.3;  // ends of single plants leave gaps that nothing fills
  Attempt best;
  for (const Point beginning : beginnings(ground, request, axis))
    for (std::size_t i = 0; i < ways; ++i) {
      const DriftFigure figure{request.at, axis, request.stretch * kWays[i].stretch};
      packing.lengthens = kWays[i].lengthens;
      Attempt next{attempt(ground, request, beginning, figure, packing), 0.0};
      next.cost = costOf(ground, next.places, request) + (kWays[i].lengthens ? kThinEnds : 0.0);
      if (better(next, best)) best = std::move(next);
    }
  return best.places;
}

std::vector<Point> staggeredPlaces(const Ground& ground, const GrowRequest& request) {
  std::vector<Point> places = bestOf(ground, request, *request.axis);
  std::vector<Point> even = relaxed(ground, request.spacing, places);
  return inOnePiece(even, request.spacing) ? even : places;
}

std::vector<Point> placesIn(const Ground& ground, const GrowRequest& request) {
  const auto counted = [&](std::vector<Point> places) {
    keepCount(places, request.count);
    return places;
  };
  switch (request.pattern) {
    case Pattern::Triangular:
    case Pattern::Square:
      return counted(strictPlaces(ground, request, {}, figureAsked(request)));
    case Pattern::Single:
      return counted(singlePlaces(ground, request, {}, figureAsked(request)));
    case Pattern::Matrix:
      return relaxed(ground, request.spacing, counted(matrixPlaces(ground, request, {})));
    case Pattern::Staggered:
      break;
  }
  return staggeredPlaces(ground, request);
}

}  // namespace

Growth growDrift(const Yard& yard, const GrowRequest& request) {
  Growth growth;
  const Bed* bed = yard.beds.find(request.bed);
  if (bed == nullptr) return growth;
  growth.axis = request.axis.value_or(usualAxis(*bed, request.pattern));
  growth.asked = countTaken(request.count, request.countAs);
  if (request.spacing < Length::centimetres(1) || !isFinite(request.at)) return growth;
  GrowRequest asked = request;
  asked.count = growth.asked;
  asked.axis = growth.axis;
  asked.stretch = std::clamp(request.stretch, 1.0, 10.0);
  const Ground ground(yard, asked, reachOf(asked));
  if (ground.empty()) return growth;
  growth.places = placesIn(ground, onGround(asked, ground.slope()));
  for (Point& place : growth.places) place = ground.slope().onPlan(place);
  return growth;
}

const Bed* bedAt(const Yard& yard, Point p) {
  const Bed* found = nullptr;
  for (const Bed& bed : yard.beds)
    if (contains(bed.outline, p) &&
        (found == nullptr || areaOf(bed.outline) < areaOf(found->outline)))
      found = &bed;
  return found;
}

Angle usualAxis(const Bed& bed, Pattern pattern) {
  const Angle lean = isStrict(pattern) ? Angle() : Angle::degrees(30);
  const Viewing& viewing = bed.viewing;
  // Along the viewing side; an island bed has none, so along its length.
  const Angle along = viewing.allRound || viewing.from.empty()
                          ? smallestRectangle(bed.outline.outer, Length()).axis
                          : -viewing.from.front();
  const double half = std::numbers::pi;
  return Angle::radians(std::fmod((along + lean).radians() + 4.0 * half, half));
}

}  // namespace tussock
