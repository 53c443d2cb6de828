// SPDX-License-Identifier: MIT
// The overview sheet: the whole site north up, its beds named, and the whole plant schedule.
#pragma once

#include <vector>

#include "core/sheets/layout.h"

namespace tussock {

// Without title strips; further pages where the schedule needs them. `totalText` stands beside the
// total of the schedule.
[[nodiscard]] std::vector<Sheet> overviewSheets(const PlanSource& source,
                                                const std::string& totalText);

}  // namespace tussock
