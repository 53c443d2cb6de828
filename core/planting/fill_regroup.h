// SPDX-License-Identifier: MIT
// After planting: drifts of one spacing and about one count change species with one another, so
// that the plants as they stand keep the rules better. No plant moves.
#pragma once

#include <vector>

#include "core/catalog/catalogue.h"
#include "core/planting/fill_layout.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_terms.h"
#include "core/planting/fill_watch.h"

namespace tussock {

struct RegroupTask {
  const Catalogue& catalogue;
  Id<Bed> bed;
  const Layout& layout;                // of the bed's main drifts as they stand
  const std::vector<Id<Drift>>& mine;  // that may change
  const FillLimits& limits;
  double wildness;
};
[[nodiscard]] Yard regrouped(const RegroupTask& task, const Yard& yard, Chance& chance,
                             const WorkWatch& watch);

}  // namespace tussock
