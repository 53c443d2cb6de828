// SPDX-License-Identifier: MIT
#include "core/planting/own_form.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <queue>

#include "core/geometry/polygon.h"
#include "core/planting/search_cell.h"

namespace tussock {

namespace {

constexpr double kKept = 0.9;  // our own judgement: an oval that is set out anew comes to more

DiscGrid gridOf(const std::vector<Point>& places, double cell) {
  const Box box = boundsOf(places);
  DiscGrid grid(box, searchCell(box, cell));
  for (const Point p : places) grid.add(p);
  return grid;
}

double shareWithin(const OwnForm& form, const std::vector<Point>& places, double metres) {
  const auto within = std::count_if(places.begin(), places.end(),
                                    [&](Point p) { return form.isWithin(p, metres); });
  return static_cast<double>(within) / static_cast<double>(places.size());
}

// Metres from one place to each, going from plant to plant over gaps that hold a drift together
// (Dijkstra 1959). Those not reached are infinitely far.
std::vector<double> waysFrom(std::size_t start, const std::vector<Point>& places,
                             const DiscGrid& grid, double reach) {
  using Waiting = std::pair<double, std::size_t>;
  std::vector<double> ways(places.size(), std::numeric_limits<double>::infinity());
  std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> waiting;
  ways[start] = 0.0;
  waiting.emplace(0.0, start);
  while (!waiting.empty()) {
    const auto [way, i] = waiting.top();
    waiting.pop();
    if (way > ways[i]) continue;
    grid.near(places[i], reach, [&, from = i, so = way](std::size_t j) {
      const double next = so + distance(places[from], places[j]);
      if (next < ways[j]) ways[j] = next, waiting.emplace(next, j);
      return true;
    });
  }
  return ways;
}

std::size_t farthestOf(const std::vector<double>& ways) {
  return static_cast<std::size_t>(std::max_element(ways.begin(), ways.end()) - ways.begin());
}

}  // namespace

OwnForm::OwnForm(const std::vector<Point>& stood, Length spacing)
    : places_(stood),
      spacing_(std::max(spacing.metres(), 0.01)),
      grid_(gridOf(places_, spacing_)),
      touching_(places_.size()) {
  for (std::size_t i = 0; i < places_.size(); ++i)
    grid_.near(places_[i], kTouch * spacing_, [&](std::size_t j) {
      if (j > i) touching_[i].push_back(j);
      return true;
    });
}

double OwnForm::distanceTo(Point p) const {
  double least = distance(p, grid_.at(grid_.nearest(p, spacing_)));
  // A line that is nearer has an end not much farther off.
  grid_.near(p, least + kTouch * spacing_ / 2.0, [&](std::size_t i) {
    for (const std::size_t j : touching_[i])
      least = std::min(least, distanceToSegment(p, places_[i], places_[j]));
    return true;
  });
  return least;
}

bool OwnForm::isWithin(Point p, double metres) const {
  return !grid_.near(p, metres, [](std::size_t) { return false; });
}

Point OwnForm::heart() const {
  Point middle;
  for (const Point p : places_) middle += p * (1.0 / static_cast<double>(places_.size()));
  return grid_.at(grid_.nearest(middle, spacing_));
}

bool OwnForm::isKeptBy(const std::vector<Point>& places, Length spacing) const {
  if (places.empty()) return false;
  return shareWithin(*this, places, spacing_) >= kKept &&
         shareWithin(OwnForm(places, spacing), places_, spacing.metres()) >= kKept;
}

OwnForm OwnForm::shortened(double share) const {
  const double reach = kTouch * spacing_;
  const std::size_t one = farthestOf(waysFrom(0, places_, grid_, reach));
  const std::vector<double> fromOne = waysFrom(one, places_, grid_, reach);
  const std::vector<double> fromOther = waysFrom(farthestOf(fromOne), places_, grid_, reach);
  std::vector<std::size_t> order(places_.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::max(fromOne[a], fromOther[a]) < std::max(fromOne[b], fromOther[b]);
  });
  const auto left = std::lround(share * static_cast<double>(places_.size()));
  order.resize(std::clamp(static_cast<std::size_t>(left), std::size_t{1}, places_.size()));
  std::vector<Point> kept;
  for (const std::size_t i : order) kept.push_back(places_[i]);
  return {kept, Length::metres(spacing_)};
}

}  // namespace tussock
