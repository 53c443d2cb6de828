// SPDX-License-Identifier: MIT
#include "app/tools/locked_drifts.h"

#include <algorithm>

#include "core/planting/divide_drift.h"

namespace tussock {

QString lockedWords() {
  const std::string_view words = explain(Refusal::Locked);
  return QString::fromUtf8(words.data(), qsizetype(words.size()));
}

bool tellIfLocked(Canvas& canvas, Id<Drift> id) {
  const Drift* drift = canvas.document().yard().drifts.find(id);
  if (!drift || !drift->locked) return false;
  canvas.tell(lockedWords());
  return true;
}

std::vector<ObjectRef> lockedAmong(const Yard& yard, const std::vector<ObjectRef>& refs) {
  std::vector<ObjectRef> locked;
  for (const ObjectRef ref : refs) {
    const auto id = idIf<Drift>(ref);
    const Drift* drift = id ? yard.drifts.find(*id) : nullptr;
    if (drift && drift->locked &&
        std::find(refs.begin(), refs.end(), refTo(drift->bed)) == refs.end())
      locked.push_back(ref);
  }
  return locked;
}

}  // namespace tussock
