// SPDX-License-Identifier: MIT
// Lists of a yard as comma-separated values.
#pragma once

#include <string>

#include "core/catalog/schedule.h"

namespace tussock {

// The plant schedule: code, quantity, drifts, botanical and common name, size, spacing in the
// yard's units. Existing plants are listed with the size "existing". Two lines without a code end
// it: the sum of what is to be planted and that of what stands there already.
[[nodiscard]] std::string scheduleCsv(const Yard& yard, const Catalogue& catalogue);

}  // namespace tussock
