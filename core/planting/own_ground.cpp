// SPDX-License-Identifier: MIT
#include "core/planting/own_ground.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "core/planting/ground.h"
#include "core/planting/patterns.h"

namespace tussock {

namespace {

constexpr std::size_t kStarts = 16;

Box boundsOfPlaces(const std::vector<Point>& places) {
  Box box{places.front(), places.front()};
  for (const Point p : places) {
    box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
    box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
  }
  return box;
}

bool isNear(const std::vector<Point>& places, Point p, double metres) {
  return std::any_of(places.begin(), places.end(),
                     [&](Point q) { return squaredDistance(p, q) < metres * metres; });
}

bool isFree(const Ground& ground, Point p) {
  return ground.holds(p) && std::none_of(ground.neighbours().begin(), ground.neighbours().end(),
                                         [p](const Neighbour& n) {
                                           return squaredDistance(p, n.at) < n.least * n.least;
                                         });
}

// The old places that are free, then the free ones about them. Along the ground.
std::vector<Point> freePlaces(const Ground& ground, const std::vector<Point>& old, double spacing) {
  std::vector<Point> all = old;
  const double step = spacing / 12.0, around = spacing / 2.0;
  const Box box = boundsOfPlaces(old).grown(around);
  for (double y = box.low.y; y <= box.high.y; y += step)
    for (double x = box.low.x; x <= box.high.x; x += step)
      if (isNear(old, {x, y}, around)) all.push_back({x, y});
  std::erase_if(all, [&](Point p) { return !isFree(ground, p); });
  return all;
}

// What plants of the drift keep from each other, in metres.
struct Apart {
  double least = 0.0;
  double most = 0.0;  // to the nearest, where the drift is to be in one piece
};

Apart apartFor(const GrowRequest& request) {
  const double s = request.spacing.metres();
  const bool loose = request.pattern == Pattern::Single || request.pattern == Pattern::Matrix;
  return {s * (isStrict(request.pattern) ? 1.0 : kLooseSpacing),
          loose ? std::numeric_limits<double>::infinity() : s * kTouch};
}

std::vector<Point> fromNearest(Point start, const std::vector<Point>& places) {
  std::vector<std::pair<double, std::size_t>> order;
  order.reserve(places.size());
  for (std::size_t i = 0; i < places.size(); ++i)
    order.emplace_back(squaredDistance(places[i], start), i);
  std::sort(order.begin(), order.end());
  std::vector<Point> sorted;
  sorted.reserve(places.size());
  for (const auto& [unused, i] : order) sorted.push_back(places[i]);
  return sorted;
}

// One place after the other, each the nearest to the first that the others leave.
std::vector<Point> packedFrom(Point start, const std::vector<Point>& places, const Apart& apart,
                              std::size_t count) {
  std::vector<Point> free = fromNearest(start, places);
  std::vector<Point> taken{start};
  while (taken.size() < count) {
    std::erase_if(free, [&](Point p) {
      return squaredDistance(p, taken.back()) < apart.least * apart.least;
    });
    const auto next = std::find_if(free.begin(), free.end(),
                                   [&](Point p) { return isNear(taken, p, apart.most); });
    if (next == free.end()) break;
    taken.push_back(*next);
  }
  keepCount(taken, static_cast<int>(count));
  return taken;
}

}  // namespace

std::vector<Point> placesOnOwnGround(const Yard& yard, const GrowRequest& request,
                                     const std::vector<Point>& old) {
  if (old.empty() || request.count < 1) return {};
  GrowRequest about = request;
  const Box box = boundsOfPlaces(old);
  about.at = (box.low + box.high) * 0.5;
  const double s = request.spacing.metres();
  const Ground ground(yard, about, distance(box.low, box.high) + s);
  if (ground.empty()) return {};
  std::vector<Point> stood;
  for (const Point p : old) stood.push_back(ground.slope().onGround(p));
  const std::vector<Point> free = freePlaces(ground, stood, s);
  const auto count = static_cast<std::size_t>(countTaken(request.count, request.countAs));
  std::vector<Point> best;
  const std::size_t step = std::max<std::size_t>(1, free.size() / kStarts);
  for (std::size_t i = 0; i < free.size() && best.size() < count; i += step) {
    std::vector<Point> next = packedFrom(free[i], free, apartFor(request), count);
    if (next.size() > best.size()) best = std::move(next);
  }
  for (Point& place : best) place = ground.slope().onPlan(place);
  return best;
}

}  // namespace tussock
