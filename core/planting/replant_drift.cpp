// SPDX-License-Identifier: MIT
#include "core/planting/replant_drift.h"

#include <fmt/format.h>

#include "core/planting/drift_plants.h"
#include "core/planting/set_out.h"

namespace tussock {

DriftEdit replantDrift(const Yard& yard, Id<Drift> id, const Species& with, int count,
                       IdSource& ids, CountAs as) {
  const int asked = countTaken(count, as);
  const DriftEdit nothing{{}, id, asked, 0};
  const Drift* found = yard.drifts.find(id);
  if (found == nullptr || found->locked || found->existing()) return nothing;
  Drift drift = *found;
  drift.species = with.botanicalName;
  drift.layer = with.usualLayer();
  drift.spacing = with.spacing;
  const auto places = setOut(yard, *found, requestFor(drift, asked, as)).places;
  if (places.empty()) return nothing;
  drift.plants = withIds(found->plants, places, ids);
  const int fitted = static_cast<int>(drift.plants.size());
  Draft draft(yard);
  draft.put(std::move(drift));
  return {draft.finish(fmt::format("Replant drift as {}", with.commonName)), id, asked, fitted};
}

}  // namespace tussock
