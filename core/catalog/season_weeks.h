// SPDX-License-Identifier: MIT
// The weeks of the growing season and its thirds; seasons on either side of the equator, and where
// a year begins there.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/bloom.h"
#include "core/model/settings.h"

namespace tussock {

// In order, over New Year south of the equator.
[[nodiscard]] std::vector<int> seasonWeeks(const Settings& settings);
[[nodiscard]] WeekSet setOf(const std::vector<int>& weeks);
// Runs of weeks of the season that are not in `weeks`, in its order.
[[nodiscard]] std::vector<WeekRange> gapsIn(WeekSet weeks, const std::vector<int>& season);
enum class SeasonThird { Early, Middle, Late };
template <>
struct EnumWords<SeasonThird> {
  static constexpr WordTable<SeasonThird, 3> values{{{SeasonThird::Early, "early third"},
                                                     {SeasonThird::Middle, "middle third"},
                                                     {SeasonThird::Late, "late third"}}};
};
[[nodiscard]] WeekSet weeksOf(SeasonThird third, const std::vector<int>& season);
// The same as a run; the season must have three weeks or more.
[[nodiscard]] WeekRange rangeOf(SeasonThird third, const std::vector<int>& season);

// The plant table tells weeks and months as they are north of the equator. South of it the same
// plant flowers and comes up half a year later: six months, or 26 weeks where a week is given
// (common practice). Twice half a year is where it was.
[[nodiscard]] int halfAYearFromMonth(int month);  // 1 to 12
[[nodiscard]] int halfAYearFromWeek(int week);    // 0 to 51
// The week north of the equator in which plants are as far on as they are in `week` there.
[[nodiscard]] int northernWeek(int week, Hemisphere where);  // 0 to 51
[[nodiscard]] Species halfAYearOn(Species species);

// A garden's year runs from winter to winter: from 1 January north of the equator, from the week
// of 2 July south of it. Whatever puts weeks or months in a row asks here where they stand in it.
[[nodiscard]] int placeInYear(int week, Hemisphere where);    // 0 to 51
[[nodiscard]] int weekAtPlace(int place, Hemisphere where);   // 0 to 51, undoes placeInYear
[[nodiscard]] int monthAtPlace(int place, Hemisphere where);  // 1 to 12, of a place from 0 to 11
// Of the first week in flower of a species whose weeks are those of that half; kWeeksInYear, after
// all others, for one that has none.
[[nodiscard]] int firstBloomPlace(const Species& species, Hemisphere where);

[[nodiscard]] bool tellsTime(std::string_view column);  // a month or a week of the year
// A value of the table, "5" or a blank, half a year on; as it is where it tells no time.
[[nodiscard]] std::string halfAYearOn(std::string_view column, const std::string& value);

}  // namespace tussock
