// SPDX-License-Identifier: MIT
// What to draw on the plan for a finding that someone asks to see.
#pragma once

#include "core/checks/finding.h"

namespace tussock {

// The drifts concerned as they are drawn, or only the plants it comes down to; else the finding's
// own place. Takes about as long as drawing them.
[[nodiscard]] std::vector<Polygon> shownPlace(const Finding& finding, const Yard& yard);

}  // namespace tussock
