// SPDX-License-Identifier: MIT
// Lengths and areas as people write them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/units/length.h"

namespace tussock {

enum class UnitSystem { FeetInches, Metres };

// Reads 12' 6 1/2", 12 ft 6 in, 12.5 ft, 78", 3.81 m, 381 cm, 3810 mm, 12.5. A bare number is feet
// or metres as `bare` says. Exact to the double nearest the value. Nothing when it is not a length,
// is negative or is not finite.
[[nodiscard]] std::optional<Length> parseLength(std::string_view text, UnitSystem bare);

// 31' 4" (to the nearest inch, or half inch below 3 ft) or 9.55 m.
[[nodiscard]] std::string formatLength(Length length, UnitSystem units);
// Heights, spreads and spacings of plants, all in one form: whole inches below 4 ft, feet and
// inches from there on, or centimetres and metres: "18 in", "5' 2\"", "45 cm", "1.60 m".
[[nodiscard]] std::string formatPlantSize(Length length, UnitSystem units);
// "10.3 sq ft" or "0.96 m²".
[[nodiscard]] std::string formatArea(Area area, UnitSystem units);

}  // namespace tussock
