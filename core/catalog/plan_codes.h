// SPDX-License-Identifier: MIT
// The short codes that stand for species on plans, given once and kept for good.
#pragma once

#include <string>
#include <string_view>

#include "core/edit/draft.h"

namespace tussock {

// Empty when the species has none yet.
[[nodiscard]] std::string codeOf(const Yard& yard, std::string_view botanicalName);
// Gives the species a code unless it has one: `wanted` when that is free and at
// most 12 bytes long, else the next proposed.
void takeCode(Draft& draft, const std::string& botanicalName, IdSource& ids,
              const std::string& wanted = {});
// The yard with a code for every species planted, so that what is printed or listed before codes
// were given agrees.
[[nodiscard]] Yard withCodes(const Yard& yard);

}  // namespace tussock
