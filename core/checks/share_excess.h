// SPDX-License-Identifier: MIT
// By how much all species, genera or families together have more than their share: the finding
// tells the largest only, and of two that are alike neither may grow less alone.
#pragma once

#include <set>

#include "core/catalog/catalogue.h"
#include "core/checks/shares.h"
#include "core/model/yard.h"

namespace tussock {

struct ShareExcess {
  double over = 0.0;           // what each has over the limit, summed, as a share of the limit
  std::set<Id<Drift>> drifts;  // of the main layer, of all that are over it
};
[[nodiscard]] ShareExcess shareExcess(const Yard& yard, const Catalogue& facts, Rank rank,
                                      double limit);

}  // namespace tussock
