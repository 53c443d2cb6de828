// SPDX-License-Identifier: MIT
#include "app/tools/move_edit.h"

#include <algorithm>

#include "core/edit/draft.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

bool bedIsAmong(const Yard& yard, Id<Drift> id, const std::vector<ObjectRef>& refs) {
  const Drift* drift = yard.drifts.find(id);
  return drift && std::find(refs.begin(), refs.end(), refTo(drift->bed)) != refs.end();
}

}  // namespace

ChangeSet moveEdit(const Yard& yard, const std::vector<ObjectRef>& refs, Point step) {
  std::vector<ObjectRef> plain;
  Yard after = yard;
  std::string label;
  for (const ObjectRef ref : refs) {
    const auto drift = idIf<Drift>(ref);
    if (!drift || bedIsAmong(yard, *drift, refs)) {
      plain.push_back(ref);
      continue;
    }
    const ChangeSet moved = moveDrift(after, *drift, step).edit;
    after = apply(after, moved);
    label = moved.label;
  }
  if (!plain.empty() || refs.size() > 1) label = moveObjects(yard, refs, step).label;
  if (!plain.empty()) after = apply(after, moveObjects(after, plain, step));
  return difference(yard, after, label);
}

std::vector<ObjectRef> movedBy(const Yard& yard, const std::vector<ObjectRef>& refs) {
  std::vector<ObjectRef> moved;
  for (const Change& change : moveObjects(yard, refs, Point{1.0, 0.0}).changes)
    moved.push_back(subjectOf(change));
  return moved;
}

}  // namespace tussock
