// SPDX-License-Identifier: MIT
// Hours of sun and the sun's day in words.
#pragma once

#include <QString>

#include "app/document/sun_view.h"

namespace tussock {

// "5.4 h of sun: 3.9 before noon, 1.5 after; June 6.8, September 3.9": the means of the season, and
// its months with the most and the fewest hours. Empty where nothing is known.
[[nodiscard]] QString sunWordsAt(const SunMap& map, Point at);
// How much more was seen than computed, in hours: "+0.6 h".
[[nodiscard]] QString differenceWords(double hours);
// "Sunrise 05:28, sunset 20:27 EDT", or that the sun does not rise or set.
[[nodiscard]] QString daylightWords(const CivilDay& day, const Settings& settings);
[[nodiscard]] QString monthWords(std::chrono::month month);
// How many trees stay as they are because no growth is told of them; empty when none do.
[[nodiscard]] QString growthWords(const Yard& yard);

}  // namespace tussock
