// SPDX-License-Identifier: MIT
#include "core/checks/mend_drift.h"

#include <fmt/format.h>

#include "core/checks/moved_plant.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

bool breaksRules(const Yard& yard, const Catalogue& facts, Id<Drift> drift, const Plant& plant) {
  const CheckInput input{yard, facts};
  return !findingsAt(surveyOf(input), drift, plant.id, plant.at).empty();
}

}  // namespace

ChangeSet mendDrift(const Yard& yard, const Catalogue& facts, Id<Drift> id) {
  const Drift* drift = yard.drifts.find(id);
  if (drift == nullptr || drift->existing()) return {};
  Yard mended = yard;
  int moved = 0;
  for (const Plant& plant : drift->plants) {
    if (!breaksRules(mended, facts, id, plant)) continue;
    const ChangeSet edit = settlePlant(mended, id, plant.id).edit;
    if (edit.empty()) continue;
    mended = apply(mended, edit);
    ++moved;
  }
  return difference(yard, mended,
                    moved == 1 ? "Settle 1 plant" : fmt::format("Settle {} plants", moved));
}

}  // namespace tussock
