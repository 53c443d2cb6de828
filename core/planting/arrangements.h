// SPDX-License-Identifier: MIT
// Ways of planting a bed, kept under names beside the one on the ground, to be compared and chosen.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/edit/change.h"

namespace tussock {

// Keeps the drifts of the bed, as they stand, under the name; locked ones too, so that they are
// there when they are no longer locked, but not what stood there before.
[[nodiscard]] ChangeSet keepArrangement(const Yard& yard, Id<Bed> bed, std::string name, int seed,
                                        double wildness, IdSource& ids);
// Plants the drifts in the bed instead of those that `instead` says. What is locked or existing
// stays, and is not planted once more. Empty when there is no such bed.
using Instead = std::function<bool(const Drift&)>;
[[nodiscard]] ChangeSet plantKept(const Yard& yard, Id<Bed> bed,
                                  const std::vector<KeptDrift>& drifts, const Instead& instead,
                                  std::string label, IdSource& ids);
struct ChosenArrangement {
  ChangeSet edit;   // empty when there is no such arrangement or bed, or it stands there already
  int leftOut = 0;  // plants that find no room beside what stays
};
// Plants the kept arrangement in place of the free drifts of its bed, which takes its wildness too.
// What is locked or existing stays; plants that would stand too near it are left out.
[[nodiscard]] ChosenArrangement chooseArrangement(const Yard& yard, Id<Arrangement> arrangement,
                                                  IdSource& ids);
[[nodiscard]] ChangeSet removeArrangement(const Yard& yard, Id<Arrangement> arrangement);
[[nodiscard]] ChangeSet renameArrangement(const Yard& yard, Id<Arrangement> arrangement,
                                          std::string name);

[[nodiscard]] KeptDrift keptFrom(const Drift& drift);
[[nodiscard]] Drift planted(const KeptDrift& kept, Id<Bed> bed, IdSource& ids);
// True for what a fill of the whole bed takes out: neither locked nor existing.
[[nodiscard]] bool isFree(const Drift& drift);

}  // namespace tussock
