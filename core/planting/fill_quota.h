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
  bool limited = false;  // by the shares that species, genera and families may have
  double most = 1e9;     // plants, where one more would bring those limits in
};

// The most of all plants that each kind comes to where its share is left open: little more than its
// part of the ground for what stands wide, such as shrubs; 1 for the others.
[[nodiscard]] std::vector<double> mostSharesOf(const std::vector<FillKind>& kinds);
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
struct DriftsRequest {
  const std::vector<FillKind>& kinds;
  const Quota& quota;
  const StandingPlants& standing;
  double area = 0.0;  // square metres
  double wildness = 0.5;
  FillLimits limits;
  bool rhythm = true;  // see fill_rhythm.h
};
// The quota in drifts of odd counts, together as near the area as they come; no species, genus or
// family over its limit after rounding, as far as the list allows.
[[nodiscard]] std::vector<PlannedDrift> driftsFor(const DriftsRequest& request, Chance& chance);

// Whether plants of these kinds can be shared out with none over its limit.
[[nodiscard]] bool sharesCanBeKept(const std::vector<FillKind>& kinds, const FillLimits& limits);
// The same for so many plants, of which each kind has whole ones.
[[nodiscard]] bool sharesCanBeKept(const std::vector<FillKind>& kinds, FillLimits limits,
                                   int plants);
// The limits of shares, each widened as far as it stands in the way by itself, then all alike until
// they can be kept.
[[nodiscard]] FillLimits limitsWithin(const std::vector<FillKind>& kinds, const FillLimits& limits);

// How many species a bed of so many plants takes: enough that none need be more than its share of
// them and of those that stand in the yard already.
[[nodiscard]] std::size_t speciesFor(double plantsInBed, double standing, double wildness,
                                     const FillLimits& limits);
// How many of a longer list a bed of so many plants holds in groups of three, the smallest that
// still are groups; one at least.
[[nodiscard]] std::size_t mostSpeciesIn(double plantsInBed);

}  // namespace tussock
