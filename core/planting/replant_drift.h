// SPDX-License-Identifier: MIT
// Another species in the place of a drift's own.
#pragma once

#include "core/planting/edit_drift.h"

namespace tussock {

// Sets the drift out anew on the ground that it has, see setOut, as `count` plants of the species,
// at its spacing and in its layer. Ids that stay are kept. `fitted` is all, an odd number, or 0
// with no edit when not one plant finds a place. No edit for locked drifts and for plants that
// stand there already.
[[nodiscard]] DriftEdit replantDrift(const Yard& yard, Id<Drift> drift, const Species& with,
                                     int count, IdSource& ids, CountAs as = CountAs::Odd);

}  // namespace tussock
