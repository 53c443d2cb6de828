// SPDX-License-Identifier: MIT
#include "core/store/history_step.h"

#include <algorithm>

namespace tussock {

namespace {

bool issuesCode(const Change& change) {
  return !change.before && change.after && std::holds_alternative<PlanCode>(*change.after);
}

}  // namespace

Yard takenBack(const Yard& yard, const ChangeSet& edit) {
  ChangeSet kept = edit;
  std::erase_if(kept.changes, issuesCode);
  return apply(yard, inverse(kept));
}

Yard doneAgain(const Yard& yard, const ChangeSet& edit) {
  ChangeSet missing = edit;
  std::erase_if(missing.changes, [&](const Change& change) {
    return issuesCode(change) && objectAt(yard, subjectOf(change)) == change.after;
  });
  return apply(yard, missing);
}

}  // namespace tussock
