// SPDX-License-Identifier: MIT
// What people type about where a yard is. Nothing is returned when the text says no such thing.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

#include "core/model/settings.h"

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

// How far a clock on standard time is ahead of mean solar time at the longitude, -12 to 12 hours:
// its offset from UTC less one hour for each 15 degrees (the definition of mean solar time).
[[nodiscard]] double hoursAheadOfSun(std::chrono::seconds standardOffset, Angle longitude);
// Whether a time zone may be that of a place at the longitude: at most 2 hours off the sun. Few
// inhabited places lie further off, such as the west of China and of Alaska (from memory).
[[nodiscard]] bool zoneSuits(std::chrono::seconds standardOffset, Angle longitude);

// What is wrong with the frost dates, and the remedy; empty when nothing is, or when one is not
// known. Common practice, all three:
// - the days from the last frost to the first hold the middle of the warm half of the year, 21 July
//   north of the equator and 21 January south of it: the warmest weeks come about a month after the
//   solstice. The order in the calendar would not do: on warm coasts the first frost may come after
//   New Year, and in the south the season always runs across it;
// - they are 30 days or more;
// - the days from the first frost to the last touch the depth of winter, 15 December to 15
// February,
//   in the south 15 June to 15 August.
[[nodiscard]] std::string frostTrouble(const Settings& settings);

}  // namespace tussock
