// SPDX-License-Identifier: MIT
#include "core/edit/draft.h"
#include "core/planting/arrangements.h"
#include "core/planting/fill.h"

namespace tussock {

Yard withoutTakenOut(const Yard& yard, const FillRequest& request) {
  Draft draft(yard);
  for (const Drift& drift : yard.drifts)
    if (takesOut(request, drift)) draft.remove(drift.id);
  return draft.yard();
}

bool takesOut(const FillRequest& request, const Drift& drift) {
  if (drift.bed != request.bed || !isFree(drift)) return false;
  switch (request.what) {
    case FillWhat::WholeBed:
      return true;
    case FillWhat::EmptyPart:
      return false;
    case FillWhat::OneSpecies:
      return drift.species == request.species;
  }
  return false;
}

}  // namespace tussock
