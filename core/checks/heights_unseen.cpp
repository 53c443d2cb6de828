// SPDX-License-Identifier: MIT
#include "core/checks/heights_unseen.h"

#include <algorithm>

namespace tussock {

namespace {

bool isOfMainLayer(const Change& change) {
  const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
  return after != nullptr && after->layer == Layer::Main;
}

}  // namespace

std::string heightsUnseen(const FillOutcome& outcome) {
  const Bed* bed = outcome.input.yard.beds.find(outcome.request.bed);
  if (bed == nullptr || bed->viewing.known() || outcome.speciesHere().size() < 2) return {};
  const auto& changes = outcome.result.edit.changes;
  if (!outcome.result.unchanged && std::none_of(changes.begin(), changes.end(), isOfMainLayer))
    return {};
  return "The bed has no viewing side, so heights were not looked at. Say from where it is seen "
         "(Seen from) and fill again.";
}

}  // namespace tussock
