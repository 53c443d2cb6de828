// SPDX-License-Identifier: MIT
// What people type about where a yard is. Nothing is returned when the text says no such thing.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tussock {

// The two letters that the United States Postal Service gives a state, the District of Columbia or
// a territory (Publication 28, appendix B), in either case; empty for not known.
[[nodiscard]] std::optional<std::string> parseState(std::string_view text);

// A USDA plant hardiness zone, 1 to 13 with or without a half, a or b, such as 6b; empty for not
// known.
[[nodiscard]] std::optional<std::string> parseHardinessZone(std::string_view text);

// Whether the text has the form of a name in the time-zone database of IANA, such as
// America/Chicago or UTC: up to three parts of letters, digits, _, + and -, each of which begins
// with a letter. Whether there is such a zone only the system's own database can say.
[[nodiscard]] bool looksLikeTimeZone(std::string_view text);

}  // namespace tussock
