// SPDX-License-Identifier: MIT
// Mends what hands have broken: single plants back to places that keep the rules.
#pragma once

#include "core/catalog/catalogue.h"
#include "core/edit/change.h"

namespace tussock {

// Takes each plant of the drift that stands against spacing, set-back or obstacles to the nearest
// place that keeps them, one after another; the others stay. Empty when none does, when there is no
// such place, for locked drifts and for plants that stand there already.
[[nodiscard]] ChangeSet mendDrift(const Yard& yard, const Catalogue& facts, Id<Drift> drift);

}  // namespace tussock
