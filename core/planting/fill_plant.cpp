// SPDX-License-Identifier: MIT
#include "core/planting/fill_plant.h"

#include "core/planting/fill_mend.h"
#include "core/planting/fill_settle.h"

namespace tussock {

namespace {

constexpr int kRounds = 36;
constexpr int kLastRounds = 60;
// Shares of the usual distance: what plants strive for, and what is kept with a little to spare.
constexpr double kStrive = 1.0;
constexpr double kKeep = 0.875;

bool anyBreach(const Settling& settling) {
  for (std::size_t i = 0; i < settling.size(); ++i)
    if (settling.item(i).stands && settling.breaches(i) > 0) return true;
  return false;
}

}  // namespace

DriftPlaces plantDrifts(const PlantingPlace& place, const Owners& owners,
                        const std::vector<DriftToPlant>& drifts, Chance& chance,
                        const WorkWatch& watch) {
  Settling settling(place, drifts, evenPlaces(place.ground, owners, drifts, chance));
  for (int i = 0; i < kRounds && !watch.halt(); ++i)
    settling.round(kStrive, Settling::Distances::Uneven);
  for (int i = 0; i < kLastRounds && !watch.halt(); ++i) {
    settling.round(kKeep, Settling::Distances::Even);
    if (i % 5 == 4 && !anyBreach(settling)) break;
  }
  return mended(settling, drifts.size(), place.ground);
}

}  // namespace tussock
