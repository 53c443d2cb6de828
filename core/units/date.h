// SPDX-License-Identifier: MIT
// Dates are the standard library's; this file adds the garden's own: days that come every year,
// and weeks of the year.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace tussock {

using Date = std::chrono::year_month_day;
using MonthDay = std::chrono::month_day;  // a day that comes every year, such as the last frost
using UtcTime = std::chrono::sys_seconds;

inline constexpr int kWeeksInYear = 52;  // the year's last one or two days belong to week 51

// Day of a common (365-day) year, 0 for 1 January; 29 February counts as 28 February.
[[nodiscard]] int dayOfYear(MonthDay day);
// Week 0 holds 1 to 7 January; never above 51.
[[nodiscard]] int weekOf(MonthDay day);
// The month that most of the week lies in: that of its fourth day.
[[nodiscard]] int monthOfWeek(int week);

// Both ends belong to it; the last may be before the first, over New Year.
struct WeekRange {
  int first = 0;
  int last = 0;
  bool operator==(const WeekRange&) const = default;
};
[[nodiscard]] bool holds(WeekRange range, int week);
// From the first week of the first month (1 to 12) to the last week of the last.
[[nodiscard]] WeekRange weeksOfMonths(int firstMonth, int lastMonth);

// "04-20"; nothing when it is no day of a leap year.
[[nodiscard]] std::optional<MonthDay> parseMonthDay(std::string_view text);
[[nodiscard]] std::string formatMonthDay(MonthDay day);  // "04-20"
// "2027-04-14"; nothing when it is no day of the calendar.
[[nodiscard]] std::optional<Date> parseDate(std::string_view text);
[[nodiscard]] std::string formatDate(Date day);                     // "2027-04-14"
[[nodiscard]] std::string readableMonthDay(MonthDay day);           // "20 April"
[[nodiscard]] std::string readableMonth(std::chrono::month month);  // "April"

}  // namespace tussock
