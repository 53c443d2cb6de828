// SPDX-License-Identifier: MIT
#include "core/planting/fill_plant.h"

#include <algorithm>
#include <numbers>

#include "core/planting/fill_loosen.h"
#include "core/planting/fill_mend.h"
#include "core/planting/fill_settle.h"

namespace tussock {

namespace {

constexpr int kPlantRounds = 36;
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

// Shares of the time that large beds take.
constexpr double kWhenEven = 0.1, kWhenSettled = 0.5, kWhenReturned = 0.75;
constexpr int kTellEach = 12;  // rounds

double between(double from, double to, int done, int all) {
  return from + (to - from) * done / all;
}

// When the time is up some rounds are gone through all the same: plants that still stand too near
// each other would be taken out.
void settle(Settling& settling, const WorkWatch& watch, const std::function<void(int)>& told = {}) {
  constexpr int kAtLeast = 12;
  const auto goesOn = [&](int i) { return i < kAtLeast ? !watch.cancelled() : !watch.halt(); };
  for (int i = 0; i < kLastRounds && goesOn(i); ++i) {
    settling.round(kKeep, Settling::Distances::Even);
    if (i % 5 == 4 && !anyBreach(settling)) break;
    if (told && i % kTellEach == 0) told(i);
  }
}

DriftPlaces placesOf(const Settling& settling, std::size_t drifts) {
  DriftPlaces places(drifts);
  for (std::size_t i = 0; i < settling.size(); ++i)
    places[settling.item(i).drift].push_back(settling.at(i));
  return places;
}

std::size_t plantsIn(const DriftPlaces& places) {
  std::size_t count = 0;
  for (const auto& own : places) count += own.size();
  return count;
}

double groundOf(const std::vector<DriftToPlant>& drifts, const DriftPlaces& places) {
  double sum = 0.0;
  for (std::size_t i = 0; i < drifts.size(); ++i)
    sum += static_cast<double>(places[i].size()) * drifts[i].spacing * drifts[i].spacing;
  return 0.5 * std::numbers::sqrt3 * sum;
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

// Gives plants that were put back a chance to find room among the others.
DriftPlaces settledAgain(const PlantingPlace& place, const std::vector<DriftToPlant>& drifts,
                         const DriftPlaces& places, const ShareCaps& caps, const WorkWatch& watch) {
  Settling settling(place, drifts, places);
  for (int i = 0; i < kReturnRounds && !watch.halt(); ++i)
    settling.round(kStrive - 0.03, Settling::Distances::Even);
  settle(settling, watch);
  return mended(settling, drifts, caps, place.ground, watch);
}

// Ground that should be taken at least, and how near plants may come to others on average, as
// shares; a little over what docs/methods-planting.md asks of beds.
constexpr double kLeastTaken = 0.936, kLeastNearest = 0.903;
constexpr double kSpare = 0.92;  // as near as that, and there is room for more

// A planting on the way to its last form.
class Easing {
 public:
  Easing(const PlantingPlace& place, const Owners& owners, const std::vector<DriftToPlant>& drifts,
         DriftPlaces places, const ShareCaps& caps, Chance& chance, const WorkWatch& watch,
         const PlantTold& told)
      : place_(place),
        owners_(owners),
        drifts_(drifts),
        caps_(caps),
        chance_(chance),
        watch_(watch),
        told_(told),
        places_(std::move(places)),
        best_(places_) {}

  // What holes are left are shared out among the plants around them and lines are loosened. Where
  // that has made room there are more plants; where they stand too near, fewer.
  DriftPlaces run() {
    constexpr int kTimes = 7;
    for (int again = 0; again < kTimes && !watch_.halt(); ++again) {
      if (told_) told_(between(kWhenReturned, 1.0, again, kTimes), best_);
      Settling settling(place_, drifts_, places_);
      for (int i = 0; i < kEaseRounds && !watch_.halt(); ++i) settling.ease(kEase);
      if (place_.layer == Layer::Main) loosen(settling, chance_, watch_);
      places_ = placesOf(settling, drifts_.size());
      keepIfBetter(settling);
      if (watch_.halt() || !change(settling)) break;
    }
    return std::move(best_);
  }

 private:
  [[nodiscard]] double taken() const {
    return groundOf(drifts_, places_) / std::max(1e-6, place_.ground.toTake());
  }
  void keepIfBetter(const Settling& settling) {
    const double lacks = std::max(0.0, kLeastTaken - taken()) +
                         std::max(0.0, kLeastNearest - settling.meanNearest()) +
                         0.01 * std::max(0.0, 1.0 - taken());
    if (lacks < lacks_) lacks_ = lacks, best_ = places_;
  }
  // Adds or takes plants; false when there is nothing to do.
  bool change(Settling& settling) {
    const std::size_t before = plantsIn(places_);
    if (const int tooMany = pairsTooMany(settling); tooMany > 0) {
      places_ = thinned(settling, drifts_, caps_, tooMany, watch_);
      return true;
    }
    places_ = mended(settling, drifts_, caps_, place_.ground, watch_);
    if (plantsIn(places_) > before) return true;
    if (taken() >= kLeastTaken || settling.meanNearest() < kSpare) return false;
    places_ = pressedIn(settling);
    return plantsIn(places_) > before;
  }
  // Pairs for drifts whose plants stand widest although there is no hole: all move up for them.
  [[nodiscard]] DriftPlaces pressedIn(const Settling& settling) const {
    std::vector<DriftToPlant> more = drifts_;
    std::vector<std::pair<double, std::size_t>> byRoom;
    std::vector<double> room(drifts_.size(), 0.0);
    for (std::size_t i = 0; i < settling.size(); ++i)
      room[settling.item(i).drift] += settling.roomFor(i, settling.at(i));
    for (std::size_t drift = 0; drift < drifts_.size(); ++drift) {
      const auto size = places_[drift].size();
      more[drift].count = static_cast<int>(size);
      if (size > 0) byRoom.emplace_back(-room[drift] / static_cast<double>(size), drift);
    }
    std::sort(byRoom.begin(), byRoom.end());
    double lacks = (kLeastTaken + 0.01 - taken()) * place_.ground.toTake();
    for (const auto& [unused, drift] : byRoom) {
      if (lacks <= 0.0) break;
      if (caps_.room(drifts_[drift].kind) < 2.0) continue;
      more[drift].count += 2;
      lacks -= std::numbers::sqrt3 * drifts_[drift].spacing * drifts_[drift].spacing;
    }
    const DriftPlaces all = Return(place_.ground, owners_, more, places_).run();
    return settledAgain(place_, drifts_, all, caps_, watch_);
  }
  // Where plants stand nearer than they should although the ground is full.
  [[nodiscard]] int pairsTooMany(const Settling& settling) const {
    const double nearest = settling.meanNearest(), full = taken();
    if (nearest >= kLeastNearest || full <= kLeastTaken || place_.layer != Layer::Main) return 0;
    // Distances go with the root of the number; half of that at a time.
    const double tooMany = std::min(kLeastNearest / nearest - 1.0, 1.0 - kLeastTaken / full);
    return std::max(1, static_cast<int>(0.5 * tooMany * static_cast<double>(settling.size())));
  }

  const PlantingPlace& place_;
  const Owners& owners_;
  const std::vector<DriftToPlant>& drifts_;
  const ShareCaps& caps_;
  Chance& chance_;
  const WorkWatch& watch_;
  const PlantTold& told_;
  DriftPlaces places_, best_;
  double lacks_ = 1e9;
};

}  // namespace

DriftPlaces plantDrifts(const PlantingPlace& place, const Owners& owners,
                        const std::vector<DriftToPlant>& drifts, const ShareCaps& caps,
                        Chance& chance, const WorkWatch& watch, const PlantTold& told) {
  Settling settling(place, drifts, evenPlaces(place.ground, owners, drifts, chance, watch));
  const auto tell = [&](int rounds) {
    const double share = between(kWhenEven, kWhenSettled, rounds, kPlantRounds + kLastRounds);
    if (told) told(share, placesOf(settling, drifts.size()));
  };
  for (int i = 0; i < kPlantRounds && !watch.halt(); ++i) {
    if (i % kTellEach == 0) tell(i);
    settling.round(kStrive, Settling::Distances::Uneven);
  }
  settle(settling, watch, [&](int round) { tell(kPlantRounds + round); });
  DriftPlaces best = mended(settling, drifts, caps, place.ground, watch);
  DriftPlaces last = best;
  // In narrow places many plants are pushed out at first: they get other chances.
  const int returns = place.layer == Layer::Main ? kReturns : kReturnsBelow;
  for (int again = 0; again < returns && !watch.halt(); ++again) {
    if (told) told(between(kWhenSettled, kWhenReturned, again, returns), best);
    const DriftPlaces all = Return(place.ground, owners, drifts, last).run();
    if (groundOf(drifts, all) < 1.005 * groundOf(drifts, best)) break;
    last = settledAgain(place, drifts, all, caps, watch);
    if (groundOf(drifts, last) > groundOf(drifts, best)) best = last;
  }
  return Easing(place, owners, drifts, std::move(best), caps, chance, watch, told).run();
}

}  // namespace tussock
