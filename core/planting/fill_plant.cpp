// SPDX-License-Identifier: MIT
#include "core/planting/fill_plant.h"

#include <algorithm>

#include "core/planting/fill_mend.h"
#include "core/planting/fill_settle.h"

namespace tussock {

namespace {

constexpr int kRounds = 36;
constexpr int kLastRounds = 120;
constexpr int kReturns = 10, kReturnRounds = 15;
constexpr int kReturnsBelow = 1;  // under the main layer, where gaps are those of its plants
// Shares of the usual distance: what plants strive for, and what is kept with a little to spare.
constexpr double kStrive = 1.0;
constexpr double kKeep = 0.87;
constexpr int kEaseRounds = 24;
constexpr double kEase = 1.15;

bool anyBreach(const Settling& settling) {
  for (std::size_t i = 0; i < settling.size(); ++i)
    if (settling.item(i).stands && settling.breaches(i) > 0) return true;
  return false;
}

void settle(Settling& settling, const WorkWatch& watch) {
  for (int i = 0; i < kLastRounds && !watch.halt(); ++i) {
    settling.round(kKeep, Settling::Distances::Even);
    if (i % 5 == 4 && !anyBreach(settling)) break;
  }
}

// What holes are left are shared out among the plants around them.
DriftPlaces eased(const PlantingPlace& place, const std::vector<DriftToPlant>& drifts,
                  DriftPlaces places, const WorkWatch& watch) {
  Settling settling(place, drifts, places);
  for (int i = 0; i < kEaseRounds && !watch.halt(); ++i) settling.ease(kEase);
  for (DriftPlaces::value_type& own : places) own.clear();
  for (std::size_t i = 0; i < settling.size(); ++i)
    places[settling.item(i).drift].push_back(settling.at(i));
  return places;
}

double groundOf(const std::vector<DriftToPlant>& drifts, const DriftPlaces& places) {
  double sum = 0.0;
  for (std::size_t i = 0; i < drifts.size(); ++i)
    sum += static_cast<double>(places[i].size()) * drifts[i].spacing * drifts[i].spacing;
  return sum;
}

// Puts plants that found no room where there is most of it in their own cells.
class Return {
 public:
  Return(const FillGround& ground, const Owners& owners, const std::vector<DriftToPlant>& drifts,
         const DriftPlaces& places)
      : drifts_(drifts), places_(places), grid_(ground.box(), 0.3), cells_(drifts.size()) {
    for (std::size_t i = 0; i < owners.size(); ++i)
      if (owners[i] >= 0)
        cells_[static_cast<std::size_t>(owners[i])].push_back(ground.cells()[i].at);
    for (std::size_t drift = 0; drift < drifts.size(); ++drift) {
      widest_ = std::max(widest_, drifts[drift].spacing);
      for (const Point p : places[drift]) grid_.add(p);
    }
  }
  DriftPlaces run() {
    for (std::size_t drift = 0; drift < drifts_.size(); ++drift)
      while (!cells_[drift].empty() &&
             static_cast<int>(places_[drift].size()) < drifts_[drift].count)
        addTo(drift);
    return places_;
  }

 private:
  void addTo(std::size_t drift) {
    Point best = cells_[drift].front();
    double most = -1.0;
    for (const Point p : cells_[drift]) {
      double nearest = 2.0 * widest_;
      grid_.near(p, nearest, [&](std::size_t i) {
        nearest = std::min(nearest, distance(p, grid_.at(i)));
        return nearest > most;
      });
      if (nearest > most) most = nearest, best = p;
    }
    places_[drift].push_back(best);
    grid_.add(best);
  }
  const std::vector<DriftToPlant>& drifts_;
  DriftPlaces places_;
  DiscGrid grid_;
  std::vector<std::vector<Point>> cells_;
  double widest_ = 0.0;
};

}  // namespace

DriftPlaces plantDrifts(const PlantingPlace& place, const Owners& owners,
                        const std::vector<DriftToPlant>& drifts, const ShareCaps& caps,
                        Chance& chance, const WorkWatch& watch) {
  Settling settling(place, drifts, evenPlaces(place.ground, owners, drifts, chance, watch));
  for (int i = 0; i < kRounds && !watch.halt(); ++i)
    settling.round(kStrive, Settling::Distances::Uneven);
  settle(settling, watch);
  DriftPlaces best = mended(settling, drifts, caps, place.ground);
  DriftPlaces last = best;
  // In narrow places many plants are pushed out at first: they get other chances.
  const int returns = place.layer == Layer::Main ? kReturns : kReturnsBelow;
  for (int again = 0; again < returns && !watch.halt(); ++again) {
    const DriftPlaces all = Return(place.ground, owners, drifts, last).run();
    if (groundOf(drifts, all) < 1.005 * groundOf(drifts, best)) break;
    Settling next(place, drifts, all);
    for (int i = 0; i < kReturnRounds && !watch.halt(); ++i)
      next.round(kStrive - 0.03, Settling::Distances::Even);
    settle(next, watch);
    last = mended(next, drifts, caps, place.ground);
    if (groundOf(drifts, last) > groundOf(drifts, best)) best = last;
  }
  return eased(place, drifts, std::move(best), watch);
}

}  // namespace tussock
