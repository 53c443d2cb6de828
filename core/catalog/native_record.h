// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "core/catalog/species.h"

namespace tussock {

// Who says in which states it is native: "USDA PLANTS", or "from memory", "by your own account".
[[nodiscard]] std::string_view nativeRecordOf(const Species& species);

}  // namespace tussock
