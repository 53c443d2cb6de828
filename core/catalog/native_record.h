// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/catalog/species.h"

namespace tussock {

// Who says in which states it is recorded: "USDA PLANTS", another list by its title, or "from
// memory", "by your own account".
[[nodiscard]] std::string nativeRecordOf(const Species& species);

// "Iowa" of "IA"; empty for letters that stand for none. The states of the USA with the District of
// Columbia and two islands for which the USDA keeps plant records (United States Postal Service,
// Publication 28, Appendix B); the provinces and territories of Canada (Canada Post's letters, from
// memory).
[[nodiscard]] std::string_view stateName(std::string_view letters);

}  // namespace tussock
