// SPDX-License-Identifier: MIT
// Planned drifts brought to the area they are to take and under the shares they may have, in pairs
// of plants so that counts stay odd.
#pragma once

#include <vector>

#include "core/planting/fill_quota.h"

namespace tussock {

void balance(const DriftsRequest& request, std::vector<PlannedDrift>& drifts);

}  // namespace tussock
