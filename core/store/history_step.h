// SPDX-License-Identifier: MIT
// One step through the history of a file. A plan code that was issued stays issued: an undo takes
// back what was planted, not what its code means, for a plan with it may have been printed.
#pragma once

#include "core/edit/change.h"

namespace tussock {

// Both throw EditConflict as apply() does.
// The yard without the edit, but with the plan codes that it issued.
[[nodiscard]] Yard takenBack(const Yard& yard, const ChangeSet& edit);
// The yard with the edit, whether or not it has kept the codes that the edit issues.
[[nodiscard]] Yard doneAgain(const Yard& yard, const ChangeSet& edit);

}  // namespace tussock
