// SPDX-License-Identifier: MIT
#include "core/checks/heights_unseen.h"

#include <algorithm>
#include <set>
#include <string_view>

namespace tussock {

namespace {

bool isOfMainLayer(const Change& change) {
  const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
  return after != nullptr && after->layer == Layer::Main;
}

std::size_t mainSpeciesIn(const Yard& yard, Id<Bed> bed) {
  std::set<std::string_view> species;
  for (const Drift* drift : driftsIn(yard, bed))
    if (drift->layer == Layer::Main) species.insert(drift->species);
  return species.size();
}

}  // namespace

std::string heightsUnseen(const Yard& planted, const FillRequest& request,
                          const FillResult& result) {
  const Bed* bed = planted.beds.find(request.bed);
  if (bed == nullptr || bed->viewing.known() || mainSpeciesIn(planted, request.bed) < 2) return {};
  const auto& changes = result.edit.changes;
  if (!result.unchanged && std::none_of(changes.begin(), changes.end(), isOfMainLayer)) return {};
  return "The bed has no viewing side, so heights were not looked at. Say from where it is seen "
         "(Seen from) and fill again.";
}

}  // namespace tussock
