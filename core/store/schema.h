// SPDX-License-Identifier: MIT
// What marks a database as a yard file, and the tables it has.
#pragma once

#include <cstdint>

namespace tussock {

inline constexpr std::int64_t kApplicationId = 0x54555353;  // "TUSS"
inline constexpr std::int64_t kSchemaVersion = 2;

// The statements that make an empty yard file of the version above.
[[nodiscard]] const char* schemaSql();

}  // namespace tussock
