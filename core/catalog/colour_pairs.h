// SPDX-License-Identifier: MIT
// How two flower colours go together, by the distance of their hues in OKLCH
// (docs/methods-plants.md).
#pragma once

#include <string_view>

#include "core/catalog/oklab.h"

namespace tussock {

// Neutral: one of the two is near white, grey or black and goes with all. Alike: nearly the same
// hue. Apart: none of these.
enum class ColourRelation { Neutral, Alike, Analogous, Complementary, Apart };
template <>
struct EnumWords<ColourRelation> {
  static constexpr WordTable<ColourRelation, 5> values{
      {{ColourRelation::Neutral, "neutral"},
       {ColourRelation::Alike, "alike"},
       {ColourRelation::Analogous, "analogous"},
       {ColourRelation::Complementary, "complementary"},
       {ColourRelation::Apart, "apart"}}};
};
[[nodiscard]] ColourRelation relationOf(Rgb a, Rgb b);
// Degrees between the hues, 0 to 180.
[[nodiscard]] double hueDistance(Rgb a, Rgb b);
// The hue across: h + 180 degrees, below 360.
[[nodiscard]] double complementOf(double hue);

}  // namespace tussock
