// SPDX-License-Identifier: MIT
// How many plants of each species, in how many drifts of what size.
#pragma once

#include <string>
#include <vector>

#include "core/planting/fill_kinds.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_terms.h"

namespace tussock {

// What already stands and counts in the shares: for each kind, and in all.
struct StandingPlants {
  std::vector<double> ofKind, ofGenus, ofFamily;  // by kind, genus and family number
  double all = 0.0;
};

struct Quota {
  std::vector<double> plants;  // for each kind
  double total = 0.0;
};

// Plants for each kind so that they take `area` square metres: even, or by the shares of the list;
// within the limits of species, genus and family as far as the list allows.
[[nodiscard]] Quota quotaFor(const std::vector<FillKind>& kinds, double area,
                             const StandingPlants& standing, const FillLimits& limits);

struct PlannedDrift {
  std::size_t kind = 0;
  int count = 1;  // odd
};
// Plants in a drift that suit the bed: larger in larger beds and in formal ones.
[[nodiscard]] double usualDriftSize(double plantsInBed, double wildness);
// The quota in drifts of odd counts, together as near `area` as they come.
[[nodiscard]] std::vector<PlannedDrift> driftsFor(const std::vector<FillKind>& kinds,
                                                  const Quota& quota, double area, double wildness,
                                                  const FillLimits& limits, Chance& chance);

// How many species a bed of so many plants takes: enough that none need be more than its share.
[[nodiscard]] std::size_t speciesFor(double plantsInBed, double wildness, const FillLimits& limits);

}  // namespace tussock
