// SPDX-License-Identifier: MIT
#include "core/planting/fill_regrow.h"

#include <algorithm>
#include <cmath>

#include "core/edit/draft.h"
#include "core/planting/drift_plants.h"
#include "core/planting/edit_drift.h"
#include "core/planting/own_ground.h"

namespace tussock {

namespace {

constexpr double kMostApart = 1.6;  // of two spacings, as a ratio

// The odd number that takes the drift's ground, or a little less.
int countAt(const Drift& drift, double spacing) {
  const double narrower = drift.spacing.metres() / spacing;
  return oddCount(
      static_cast<int>(static_cast<double>(drift.plants.size()) * narrower * narrower + 0.5));
}

}  // namespace

std::optional<Drift> regrownAs(const Yard& yard, const Drift& drift, const FillKind& kind) {
  const double ratio = kind.spacing / drift.spacing.metres();
  if (std::max(ratio, 1.0 / ratio) > kMostApart) return std::nullopt;
  Drift next = drift;
  next.species = kind.species->botanicalName;
  next.spacing = Length::metres(kind.spacing);
  const int count = countAt(drift, kind.spacing);
  const auto places = placesOnOwnGround(yard, requestFor(next, count), positionsOf(drift));
  if (static_cast<int>(places.size()) < count) return std::nullopt;
  IdSource ids(largestId(yard) + 1);
  next.plants = withIds(drift.plants, places, ids);
  return next;
}

}  // namespace tussock
