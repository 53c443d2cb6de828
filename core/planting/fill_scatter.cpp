// SPDX-License-Identifier: MIT
#include "core/planting/fill_scatter.h"

#include <algorithm>

#include "core/planting/enlarge.h"
#include "core/planting/plant_count.h"

namespace tussock {

namespace {

// Metres; 0 where it is not known from where the bed is looked at.
double awayFromViewers(const KeptDrift& drift, const FillGround& ground) {
  double sum = 0.0;
  for (const Point p : drift.places)
    if (const int cell = ground.at(p); cell >= 0)
      sum += static_cast<double>(ground.cells()[static_cast<std::size_t>(cell)].toViewers);
  return sum / static_cast<double>(std::max<std::size_t>(1, drift.places.size()));
}

// The cells of a ground by squares of four metres, each square's mean distance from the viewers.
struct Squares {
  explicit Squares(const FillGround& ground) {
    constexpr double kSide = 4.0;  // metres: room for several drifts of carpets
    const int across = 1 + static_cast<int>(ground.box().width() / kSide);
    std::map<int, std::size_t> numbers;
    for (const FillCell& cell : ground.cells()) {
      const Point from = cell.at - ground.box().low;
      const int place =
          static_cast<int>(from.y / kSide) * across + static_cast<int>(from.x / kSide);
      const auto [at, isNew] = numbers.try_emplace(place, cells.size());
      if (isNew) cells.push_back(0.0), away.push_back(0.0);
      of.push_back(at->second);
      cells[at->second] += 1.0;
      away[at->second] += static_cast<double>(cell.toViewers);
    }
    for (std::size_t i = 0; i < away.size(); ++i) away[i] /= cells[i];
  }
  std::vector<std::size_t> of;      // the square of each cell
  std::vector<double> cells, away;  // of each square
};

}  // namespace

void keepSomeGround(FillGround& ground, double plants, double each, Chance& chance) {
  constexpr double kMany = 10'000.0, kTimes = 3.0;  // plants that would fill the ground; as many
  const double asked = kTimes * std::max(plants, 1.0) * each;
  if (ground.area() < kMany * each || ground.area() < asked) return;
  const Squares squares(ground);
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t i = 0; i < squares.away.size(); ++i)
    order.emplace_back((0.5 + squares.away[i]) * chance.between(0.5, 1.5), i);
  std::sort(order.begin(), order.end());
  std::vector<bool> chosen(order.size(), false);
  double left = asked;
  for (const auto& [unused, square] : order) {
    if (left <= 0.0) break;
    chosen[square] = true;
    left -= squares.cells[square] * ground.cellArea();
  }
  std::vector<bool> keep;
  for (const std::size_t square : squares.of) keep.push_back(chosen[square]);
  ground.keepOnly(keep);
}

std::vector<KeptDrift> scattered(std::vector<KeptDrift> drifts,
                                 std::map<std::string, double> plants, const FillGround& ground,
                                 Chance& chance) {
  std::vector<std::pair<double, KeptDrift>> order;
  for (KeptDrift& drift : drifts) {
    const double away = 0.5 + awayFromViewers(drift, ground);
    order.emplace_back(away * chance.between(0.5, 1.5), std::move(drift));
  }
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<KeptDrift> some;
  for (auto& [unused, drift] : order) {
    double& left = plants[drift.species];
    if (left < 0.5) continue;
    drift.places = fewerPlaces(drift, oddNear(left));
    left -= static_cast<double>(drift.places.size());
    some.push_back(std::move(drift));
  }
  return some;
}

}  // namespace tussock
