// SPDX-License-Identifier: MIT
// What stands in for a flower's colour and form where a table gives none, so that a plant in flower
// shows in flower. Our own judgement, and never written to a table or shown as a value of it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/catalog/species.h"

namespace tussock {

// By the first word in `words` that the shipped table has: the median, by red, green and blue, of
// the colours of its species of that word ("pale yellow" as yellow). Nothing for other words.
[[nodiscard]] std::optional<Rgb> usualFlowerColour(std::string_view words);
// The form that most species of that habit have in the shipped table, for shrubs the second most:
// spires count as see-through, which few shrubs are.
[[nodiscard]] FlowerForm usualFlowerForm(Habit habit);

// What a plant is drawn in and compared by: its own, else, of what flowers, the usual; nothing for
// no known colour.
[[nodiscard]] std::optional<Rgb> flowerColourOf(const Species& species);
// Its own, else, of what is in flower in a known colour, the usual.
[[nodiscard]] FlowerForm flowerFormOf(const Species& species);
// What stands in at "flower_hex" or "flower_form", such as "#F3C621, as usual for yellow"; empty
// for other columns, and where a value is given or nothing stands in.
[[nodiscard]] std::string standInWords(const Species& species, std::string_view column);

}  // namespace tussock
