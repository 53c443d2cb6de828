// SPDX-License-Identifier: MIT
// Weeks in which nothing is in flower.
#pragma once

#include <cstdint>
#include <vector>

#include "core/checks/survey.h"
#include "core/checks/week_range.h"

namespace tussock {

using WeekSet = std::uint64_t;  // bit w for week w of the year, 0 to 51

// Grasses and sedges flower too, but are not what people or bees mean by a flower.
[[nodiscard]] bool showsFlowers(const Species& species);
[[nodiscard]] WeekSet weeksInFlower(const Species& species);

// The weeks of the growing season, in order, over New Year south of the equator.
[[nodiscard]] std::vector<int> seasonWeeks(const Settings& settings);
enum class SeasonThird { Early, Middle, Late };
template <>
struct EnumWords<SeasonThird> {
  static constexpr WordTable<SeasonThird, 3> values{{{SeasonThird::Early, "early third"},
                                                     {SeasonThird::Middle, "middle third"},
                                                     {SeasonThird::Late, "late third"}}};
};
[[nodiscard]] WeekSet weeksOf(SeasonThird third, const std::vector<int>& season);

}  // namespace tussock
