// SPDX-License-Identifier: MIT
// What a selection comes down to, for panels.
#pragma once

#include <vector>

#include "core/model/yard.h"

namespace tussock {

// The selected bed, or the bed of the one selected drift; null otherwise.
[[nodiscard]] const Bed* bedOfSelection(const Yard& yard, const std::vector<ObjectRef>& selection);

}  // namespace tussock
