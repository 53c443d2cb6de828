// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/catalog/species.h"

namespace tussock::test {

// The keys under which a value was read; empty when the table names none.
[[nodiscard]] inline std::string sourceOf(const Species& species, std::string_view field) {
  return std::string(species.sourceOf(field));
}

}  // namespace tussock::test
