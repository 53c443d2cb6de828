// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

#include "core/catalog/species.h"

namespace tussock::test {

// The keys under which a value was read; empty when the table names none.
[[nodiscard]] inline std::string sourceOf(const Species& species, std::string_view field) {
  const auto at = std::find_if(species.sources.begin(), species.sources.end(),
                               [&](const FactSource& source) { return source.field == field; });
  return at == species.sources.end() ? std::string{} : at->keys;
}

}  // namespace tussock::test
