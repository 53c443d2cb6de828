// SPDX-License-Identifier: MIT
// A run of weeks of the year.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/catalog/bloom.h"
#include "core/model/settings.h"
#include "core/units/date.h"

namespace tussock {

[[nodiscard]] int lengthOf(WeekRange range);  // weeks, 1 to 52
[[nodiscard]] WeekSet weeksOf(WeekRange range);

// "weeks 18 to 20", counted from 1 as people do, and back.
[[nodiscard]] std::string formatWeeks(WeekRange range);
[[nodiscard]] std::optional<WeekRange> parseWeeks(std::string_view text);
[[nodiscard]] MonthDay firstDayOf(int week);  // week 0 begins on 1 January
[[nodiscard]] MonthDay lastDayOf(int week);   // week 51 ends on 31 December
// The days of the range that lie in the season; range and season may both go over New Year.
struct DayRange {
  MonthDay first, last;
};
[[nodiscard]] DayRange daysWithin(WeekRange range, const GrowingSeason& season);
// "7 May to 20 May": weeks begin and end where they do, but nobody is told of days outside the
// season.
[[nodiscard]] std::string daysInWords(WeekRange range, const GrowingSeason& season);
[[nodiscard]] double weeksLong(DayRange days);  // both ends belong to it; 7 days are 1

}  // namespace tussock
