// SPDX-License-Identifier: MIT
#include "core/planting/fill_rhythm.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/planting/fill_cells.h"
#include "core/planting/plant_count.h"

namespace tussock {

namespace {

constexpr int kLeastGroups = 3, kLeastInGroup = 3;

// The height of the lower third of the kinds.
double lowAmong(const std::vector<FillKind>& kinds) {
  std::vector<double> heights;
  for (const FillKind& kind : kinds) heights.push_back(kind.seen.height);
  if (heights.empty()) return 0.0;
  const auto third = heights.begin() + static_cast<std::ptrdiff_t>(heights.size() / 3);
  std::nth_element(heights.begin(), third, heights.end());
  return *third;
}

bool allComeAgain(const DriftsRequest& request) {
  constexpr double kEach = 1.7;    // drifts
  constexpr std::size_t kFew = 8;  // kinds, of which fewer come again as it is
  if (request.kinds.size() < kFew) return true;
  const double drifts = request.quota.total / usualDriftSize(request.quota.total, request.wildness);
  return drifts > kEach * static_cast<double>(request.kinds.size());
}

std::size_t nearestTo(const std::vector<Point>& points, Point p) {
  std::size_t nearest = 0;
  for (std::size_t i = 1; i < points.size(); ++i)
    if (distance(points[i], p) < distance(points[nearest], p)) nearest = i;
  return nearest;
}

// Middles of even parts of the ground (Lloyd 1982).
std::vector<Point> evenParts(const FillGround& ground, std::size_t count, Chance& chance) {
  constexpr int kRounds = 30;
  std::vector<Point> middles = spreadMiddles(ground, count, Angle(), 1.0, chance);
  for (int round = 0; round < kRounds; ++round) {
    std::vector<Point> sums(middles.size());
    std::vector<double> cells(middles.size(), 0.0);
    for (const FillCell& cell : ground.cells()) {
      const std::size_t part = nearestTo(middles, cell.at);
      sums[part] += cell.at, cells[part] += 1.0;
    }
    for (std::size_t i = 0; i < middles.size(); ++i)
      if (cells[i] > 0.0) middles[i] = sums[i] * (1.0 / cells[i]);
  }
  return middles;
}

// An odd number, so that one stands in the middle.
int groupsFor(double plants, int usual) {
  constexpr double kFive = 25.0, kSeven = 49.0;  // plants
  const int fitting = plants >= kSeven ? 7 : plants >= kFive ? 5 : kLeastGroups;
  return oddCount(std::max(fitting, usual));
}

struct Depths {
  std::size_t first = 0, last = 0;  // places from first up to, not including, last
};

// Places from the viewers to the rear.
std::vector<std::size_t> fromTheFront(const RhythmPlaces& places) {
  std::vector<std::size_t> order(places.middles.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return places.ground.toViewersAt(places.middles[a]) <
           places.ground.toViewersAt(places.middles[b]);
  });
  return order;
}

// Of all places those about as far back as the groups stand now.
std::vector<std::size_t> placesFor(const RhythmPlaces& places,
                                   const std::vector<std::size_t>& drifts, std::size_t groups) {
  constexpr double kAround = 0.3;  // of all, to either side
  const auto& cells = places.ground.cells();
  const bool viewed = std::any_of(cells.begin(), cells.end(),
                                  [](const FillCell& cell) { return cell.toViewers > 0.0F; });
  const std::vector<std::size_t> order = fromTheFront(places);
  if (!viewed) return order;
  double middle = 0.0;
  for (std::size_t i = 0; i < order.size(); ++i)
    if (places.planned[drifts[order[i]]].kind == places.kind)
      middle += (static_cast<double>(i) + 0.5) / static_cast<double>(groups);
  const auto all = static_cast<double>(order.size());
  const double around = std::max(kAround * all, static_cast<double>(groups));
  return {order.begin() + static_cast<std::ptrdiff_t>(std::max(0.0, middle - around)),
          order.begin() + static_cast<std::ptrdiff_t>(std::min(all, middle + around))};
}

// For each even part of the ground the place of these nearest its middle.
std::set<std::size_t> evenPlaces(const RhythmPlaces& places,
                                 const std::vector<std::size_t>& allowed, std::size_t groups,
                                 Chance& chance) {
  std::set<std::size_t> taken;
  for (const Point part : evenParts(places.ground, groups, chance)) {
    std::optional<std::size_t> nearest;
    for (const std::size_t place : allowed)
      if (!taken.contains(place) && (!nearest || distance(places.middles[place], part) <
                                                     distance(places.middles[*nearest], part)))
        nearest = place;
    if (nearest) taken.insert(*nearest);
  }
  return taken;
}

}  // namespace

std::optional<std::size_t> rhythmKind(const DriftsRequest& request) {
  std::optional<std::size_t> chosen;
  if (!request.rhythm || request.wildness > kLeastWildRhythm || allComeAgain(request))
    return chosen;
  const double low = lowAmong(request.kinds);
  for (std::size_t i = 0; i < request.kinds.size(); ++i) {
    const FillKind& kind = request.kinds[i];
    if (request.quota.plants[i] < kLeastGroups * kLeastInGroup || kind.seen.height > low) continue;
    if (kind.diseaseProne || kind.matrix) continue;
    if (!chosen || kind.spacing > request.kinds[*chosen].spacing) chosen = i;
  }
  return chosen;
}

std::vector<PlannedDrift> groupsInRhythm(std::size_t kind, double plants, int usual) {
  const int most = oddCount(static_cast<int>(plants / kLeastInGroup));
  const int groups = std::min(groupsFor(plants, usual), most);
  return {static_cast<std::size_t>(groups), {kind, oddNear(plants / groups)}};
}

std::set<std::size_t> setRhythm(const RhythmPlaces& places, std::vector<std::size_t>& drifts,
                                Chance& chance) {
  const std::vector<std::size_t> order = fromTheFront(places);
  std::vector<std::size_t> again, others;
  for (const std::size_t place : order)
    (places.planned[drifts[place]].kind == places.kind ? again : others).push_back(drifts[place]);
  const std::set<std::size_t> taken =
      evenPlaces(places, placesFor(places, drifts, again.size()), again.size(), chance);
  std::size_t i = 0, j = 0;
  for (const std::size_t place : order)
    drifts[place] = taken.contains(place) || j == others.size() ? again[i++] : others[j++];
  return taken;
}

}  // namespace tussock
