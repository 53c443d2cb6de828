// SPDX-License-Identifier: MIT
// How far plants have filled in some years after planting.
//
// The shares are common practice, from memory: herbaceous perennials from plugs are said to sleep
// in their first year, creep in the second and leap in the third; woody plants take about six
// years. They serve to show a picture of the early years, not to order or space plants by.
#pragma once

#include "core/catalog/species.h"

namespace tussock {

enum class GrowthYear { First, Second, Third, Mature };
template <>
struct EnumWords<GrowthYear> {
  static constexpr WordTable<GrowthYear, 4> values{{{GrowthYear::First, "year 1"},
                                                    {GrowthYear::Second, "year 2"},
                                                    {GrowthYear::Third, "year 3"},
                                                    {GrowthYear::Mature, "mature"}}};
};

// Share of the mature spread that a plant has reached at the end of that season, 0 to 1. Plants
// that were there already are mature.
[[nodiscard]] double shareOfSpread(const Species& species, StockSize size, GrowthYear year);
[[nodiscard]] Length spreadIn(const Species& species, StockSize size, GrowthYear year);

}  // namespace tussock
