// SPDX-License-Identifier: MIT
// Weeks in which nothing is in flower.
#pragma once

#include <vector>

#include "core/catalog/bloom.h"
#include "core/checks/survey.h"
#include "core/checks/week_range.h"

namespace tussock {

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
