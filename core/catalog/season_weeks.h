// SPDX-License-Identifier: MIT
// The weeks of the growing season and its thirds.
#pragma once

#include <vector>

#include "core/catalog/bloom.h"
#include "core/model/settings.h"

namespace tussock {

// In order, over New Year south of the equator.
[[nodiscard]] std::vector<int> seasonWeeks(const Settings& settings);
[[nodiscard]] WeekSet setOf(const std::vector<int>& weeks);
enum class SeasonThird { Early, Middle, Late };
template <>
struct EnumWords<SeasonThird> {
  static constexpr WordTable<SeasonThird, 3> values{{{SeasonThird::Early, "early third"},
                                                     {SeasonThird::Middle, "middle third"},
                                                     {SeasonThird::Late, "late third"}}};
};
[[nodiscard]] WeekSet weeksOf(SeasonThird third, const std::vector<int>& season);

}  // namespace tussock
