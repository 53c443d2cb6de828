// SPDX-License-Identifier: MIT
// One drift into two, two into one. No plant is lost silently: what was added or given up is told.
#pragma once

#include <string_view>

#include "core/planting/edit_drift.h"

namespace tussock {

enum class Refusal { None, Missing, Locked, AllOnOneSide, OtherSpecies, OtherPlanting, Apart };
// The fact, then the remedy; empty for None.
[[nodiscard]] std::string_view explain(Refusal refusal);

struct Division {
  ChangeSet edit;  // empty when refused
  Refusal refusal = Refusal::None;
  Id<Drift> first;   // keeps its id: the larger part, or the larger of two merged
  Id<Drift> second;  // the new drift; none after a merge
  int added = 0;     // plants, to make counts odd
  int removed = 0;   // plants given up, where none could be added
};

// Parts the drift along the straight line through two points, which runs on beyond them. Both parts
// become odd: of an even total, the plant nearest the line changes sides; of an odd one, the even
// part gains a plant where one fits beside it, else it gives up its outermost. Axis and stretch of
// a staggered drift become those of the plants it then has, also when drifts are merged.
[[nodiscard]] Division splitDrift(const Yard& yard, Id<Drift> drift, Point from, Point to,
                                  IdSource& ids);
// Two drifts of one species, layer and size that touch become one, of the larger's spacing and
// pattern. An even sum gains a plant where one fits, else gives up the outermost.
[[nodiscard]] Division mergeDrifts(const Yard& yard, Id<Drift> a, Id<Drift> b, IdSource& ids);

}  // namespace tussock
