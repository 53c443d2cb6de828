// SPDX-License-Identifier: MIT
// Whether what is recorded of a species' regulation speaks of a state.
#pragma once

#include <string_view>

#include "core/catalog/species.h"

namespace tussock {

// The note names the state, in full or by its two letters ("NY"). A note without a state speaks of
// none; blank never means that there is no rule.
[[nodiscard]] bool isRegulatedIn(const Species& species, std::string_view state);

}  // namespace tussock
