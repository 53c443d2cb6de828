// SPDX-License-Identifier: MIT
// Mends what hands have broken: plants back to places that keep the rules.
#pragma once

#include "core/catalog/catalogue.h"
#include "core/edit/change.h"

namespace tussock {

struct MendedDrift {
  ChangeSet edit;  // empty when nothing was to mend, or nothing could be
  int broken = 0;  // plants that still stand against spacing, set-back or obstacles
  int apart = 0;   // plants apart from the most of their drift, where it should be in one piece
};

// Takes each plant of the drift that stands against spacing, set-back or obstacles, or apart from
// the most of its drift, to the nearest place that keeps them, one after another; the others stay.
// Where that leaves one of them, or parts the drift, all of it is set out anew where it stands, if
// it then fits whole and better. Nothing for locked drifts and for plants that stand there already.
[[nodiscard]] MendedDrift mendDrift(const Yard& yard, const Catalogue& facts, Id<Drift> drift);

}  // namespace tussock
