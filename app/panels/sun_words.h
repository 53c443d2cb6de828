// SPDX-License-Identifier: MIT
// Hours of sun and the sun's day in words.
#pragma once

#include <QString>

#include "app/document/sun_view.h"
#include "core/catalog/fit.h"

namespace tussock {

// Hours under a point for the span that is shown, which is told first: "Growing season: 5.4 h of
// sun, 3.9 before noon and 1.5 after; June 6.8, September 3.9". Says so where a roof or a trunk
// covers the ground. Empty where nothing is known.
[[nodiscard]] QString sunWordsAt(const SunView& view, Point at);
// The same in brief: "5.4 h of sun here".
[[nodiscard]] QString briefSunWordsAt(const SunView& view, Point at);
// What is shown at a point; nothing under a roof, on a trunk, or where nothing is known.
[[nodiscard]] std::optional<double> hoursShownAt(const SunView& view, Point at);
// Hours as figures that add up: "6.3", "5.7" and "12.0", each within 0.1 of what it is.
struct HourFigures {
  QString before, after, total;
};
[[nodiscard]] HourFigures hourFigures(const SunHours& hours);
// "Sunrise 05:28, sunset 20:27 EDT", or that the sun does not rise or set; and when it is behind
// the skyline: "behind the skyline until 09:50".
[[nodiscard]] QString daylightWords(const CivilDay& day, const Settings& settings);
// While the sun is seen at the rim, by the bent air, but its middle is below it; empty otherwise.
[[nodiscard]] QString horizonWords(const CivilDay& day, int minute, const Settings& settings);
[[nodiscard]] QString monthWords(std::chrono::month month);
// The days of a month that lie in the season: "May", or "20–30 April".
[[nodiscard]] QString monthWords(std::chrono::month month, const GrowingSeason& season);
// Why part of the ground has no hours; empty where the whole lot is mapped.
[[nodiscard]] QString groundWords(const Yard& yard);
// Where the limits of the sun classes are from, in brief: the whole of it stands with the yard.
[[nodiscard]] QString limitWords(const SunProfile& profile);
// How many trees stay as they are because no growth is told of them; empty when none do.
[[nodiscard]] QString growthWords(const Yard& yard);

}  // namespace tussock
