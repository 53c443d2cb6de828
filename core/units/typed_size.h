// SPDX-License-Identifier: MIT
// Sizes of drifts as people type them into a field that shows them.
#pragma once

#include <optional>
#include <string_view>

#include "core/units/measure_text.h"

namespace tussock {

// Reads 2.5 m², 2.5 m2, 2.5 sq m, 27 sq ft, 27 ft², 27 ft2, 2.5. A bare number is square feet or
// metres as `bare` says. Nothing when it is no area, is negative or is not finite.
[[nodiscard]] std::optional<Area> parseArea(std::string_view text, UnitSystem bare);

// As parseLength, but a bare number is in the unit that formatPlantSize shows, inches or
// centimetres, where that lies from `least` to `most`, else in feet or metres: 18 is 18 in, and 1.5
// is 18 in too.
[[nodiscard]] std::optional<Length> parsePlantSize(std::string_view text, UnitSystem bare,
                                                   Length least, Length most);

}  // namespace tussock
