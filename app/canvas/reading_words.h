// SPDX-License-Identifier: MIT
// A sun reading in words.
#pragma once

#include <optional>
#include <QString>

namespace tussock {

// How much more was seen than computed, in hours: "+0.6 h".
[[nodiscard]] QString differenceWords(double hours);
// "4.5 h seen, 3.9 computed: +0.6 h", or what was seen alone.
[[nodiscard]] QString readingWords(double seen, std::optional<double> computed);
// The same where there is little room, seen first: "4.5 h (3.9)".
[[nodiscard]] QString briefReading(double seen, std::optional<double> computed);

}  // namespace tussock
