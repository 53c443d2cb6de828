// SPDX-License-Identifier: MIT
// Hours of sun as people write them.
#pragma once

#include <optional>
#include <string_view>

namespace tussock {

// "4.5", "4,5", "4.5 h", "4:30" or "4 h 30"; nothing when it is no such thing or not 0 to 24 hours.
[[nodiscard]] std::optional<double> parseSunHours(std::string_view text);

}  // namespace tussock
