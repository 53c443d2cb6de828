// SPDX-License-Identifier: MIT
#include "app/panels/selection.h"

namespace tussock {

const Bed* bedOfSelection(const Yard& yard, const std::vector<ObjectRef>& selection) {
  if (selection.size() != 1) return nullptr;
  if (const auto bed = idIf<Bed>(selection.front())) return yard.beds.find(*bed);
  const auto drift = idIf<Drift>(selection.front());
  const Drift* found = drift ? yard.drifts.find(*drift) : nullptr;
  return found ? yard.beds.find(found->bed) : nullptr;
}

}  // namespace tussock
