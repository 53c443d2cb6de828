// SPDX-License-Identifier: MIT
// That a fill could not look at heights: nobody has said from where the bed is seen.
#pragma once

#include <string>

#include "core/checks/fill_outcome.h"

namespace tussock {

// A sentence or two; empty where the viewing side is known, where nothing of the main layer was
// planted, and where one species stands alone.
[[nodiscard]] std::string heightsUnseen(const FillOutcome& outcome);

}  // namespace tussock
