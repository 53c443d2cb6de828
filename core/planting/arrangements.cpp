// SPDX-License-Identifier: MIT
#include "core/planting/arrangements.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/catalog/plan_codes.h"
#include "core/planting/room_beside.h"

namespace tussock {

Drift planted(const KeptDrift& kept, Id<Bed> bed, IdSource& ids) {
  Drift drift;
  drift.id = ids.take<Drift>();
  drift.bed = bed;
  drift.species = kept.species;
  drift.layer = kept.layer;
  drift.spacing = kept.spacing;
  drift.size = kept.size;
  drift.pattern = kept.pattern;
  drift.axis = kept.axis;
  drift.stretch = kept.stretch;
  for (const Point place : kept.places) drift.plants.push_back({ids.take<Plant>(), place});
  return drift;
}

bool isFree(const Drift& drift) {
  return !drift.locked && !drift.existing();
}

KeptDrift keptFrom(const Drift& drift) {
  return {drift.species, drift.layer, drift.spacing, drift.size,
          drift.pattern, drift.axis,  drift.stretch, positionsOf(drift)};
}

namespace {

std::vector<const Drift*> stayingIn(const Yard& yard, Id<Bed> bed) {
  std::vector<const Drift*> staying = driftsIn(yard, bed);
  std::erase_if(staying, [](const Drift* drift) { return isFree(*drift); });
  return staying;
}

bool standsAs(const std::vector<const Drift*>& staying, const KeptDrift& kept) {
  return std::any_of(staying.begin(), staying.end(),
                     [&](const Drift* drift) { return keptFrom(*drift) == kept; });
}

}  // namespace

ChangeSet keepArrangement(const Yard& yard, Id<Bed> bed, std::string name, int seed,
                          double wildness, IdSource& ids) {
  if (yard.beds.find(bed) == nullptr) return {};
  Arrangement arrangement;
  arrangement.id = ids.take<Arrangement>();
  arrangement.bed = bed;
  arrangement.name = std::move(name);
  arrangement.seed = seed;
  arrangement.wildness = wildness;
  for (const Drift* drift : driftsIn(yard, bed))
    if (!drift->existing()) arrangement.drifts.push_back(keptFrom(*drift));
  std::string label = fmt::format("Keep arrangement {}", arrangement.name);
  Draft draft(yard);
  draft.put(std::move(arrangement));
  return draft.finish(std::move(label));
}

ChangeSet plantKept(const Yard& yard, Id<Bed> bed, const std::vector<KeptDrift>& drifts,
                    const Instead& instead, std::string label, IdSource& ids) {
  if (yard.beds.find(bed) == nullptr) return {};
  std::vector<KeptDrift> fresh = drifts;
  Draft draft(yard);
  for (const Drift* drift : driftsIn(yard, bed)) {
    // What stands just so already stays, and its plants keep their ids.
    const auto same = std::find(fresh.begin(), fresh.end(), keptFrom(*drift));
    if (same != fresh.end()) {
      fresh.erase(same);
    } else if (isFree(*drift) && instead(*drift)) {
      draft.remove(drift->id);
    }
  }
  for (const KeptDrift& kept : fresh) {
    takeCode(draft, kept.species, ids);
    draft.put(planted(kept, bed, ids));
  }
  return draft.finish(std::move(label));
}

ChosenArrangement chooseArrangement(const Yard& yard, Id<Arrangement> id, IdSource& ids) {
  const Arrangement* arrangement = yard.arrangements.find(id);
  if (arrangement == nullptr || yard.beds.find(arrangement->bed) == nullptr) return {};
  ChosenArrangement chosen;
  std::vector<KeptDrift> drifts;
  const std::vector<const Drift*> staying = stayingIn(yard, arrangement->bed);
  for (KeptDrift kept : arrangement->drifts) {
    if (!standsAs(staying, kept)) {
      const std::size_t before = kept.places.size();
      kept.places = roomBeside(yard.settings, kept, staying);
      chosen.leftOut += static_cast<int>(before - kept.places.size());
    }
    if (!kept.places.empty()) drifts.push_back(std::move(kept));
  }
  const auto all = [](const Drift&) { return true; };
  const std::string label = fmt::format("Choose arrangement {}", arrangement->name);
  Yard after = apply(yard, plantKept(yard, arrangement->bed, drifts, all, label, ids));
  Bed bed = *after.beds.find(arrangement->bed);
  bed.wildness = arrangement->wildness;
  after.beds = after.beds.with(bed);
  chosen.edit = difference(yard, after, label);
  return chosen;
}

ChangeSet removeArrangement(const Yard& yard, Id<Arrangement> id) {
  const Arrangement* arrangement = yard.arrangements.find(id);
  if (arrangement == nullptr) return {};
  Draft draft(yard);
  draft.remove(id);
  return draft.finish(fmt::format("Remove arrangement {}", arrangement->name));
}

ChangeSet renameArrangement(const Yard& yard, Id<Arrangement> id, std::string name) {
  const Arrangement* found = yard.arrangements.find(id);
  if (found == nullptr) return {};
  Arrangement arrangement = *found;
  arrangement.name = std::move(name);
  Draft draft(yard);
  draft.put(std::move(arrangement));
  return draft.finish("Rename arrangement");
}

}  // namespace tussock
