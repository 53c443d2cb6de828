// SPDX-License-Identifier: MIT
// Figures of the plant table as people read and write them. Each pair is the two ways of one kind
// of column; see fact_words.h.
#pragma once

#include "core/catalog/fact_words.h"

namespace tussock {

// A number with a minus before it, whatever its unit.
[[nodiscard]] bool isNegative(std::string_view typed);

// Centimetres of the table. A figure without a unit is refused: it could be inches or feet.
[[nodiscard]] std::string shownSize(std::string_view centimetres, UnitSystem units);
[[nodiscard]] TypedFact readSize(std::string_view typed, UnitSystem units, Length most);

[[nodiscard]] std::string shownMonth(std::string_view number);
[[nodiscard]] TypedFact readMonth(std::string_view typed);

// A week of the year, 1 to 52, and the day it begins on; a day may be typed as well.
[[nodiscard]] std::string shownWeek(std::string_view number);
[[nodiscard]] TypedFact readWeek(std::string_view typed);

// In an ounce (avoirdupois, 28.349523125 g, exact since 1959) or a gram. One must be named.
[[nodiscard]] std::string shownSeeds(std::string_view perGram, UnitSystem units);
[[nodiscard]] TypedFact readSeeds(std::string_view typed);

}  // namespace tussock
