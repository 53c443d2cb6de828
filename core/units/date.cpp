// SPDX-License-Identifier: MIT
#include "core/units/date.h"

#include <algorithm>
#include <array>
#include <charconv>

#include <fmt/format.h>

namespace tussock {

namespace {

std::optional<unsigned> digits(std::string_view text) {
  unsigned value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

constexpr std::array kMonthNames{"January",   "February", "March",    "April",
                                 "May",       "June",     "July",     "August",
                                 "September", "October",  "November", "December"};

constexpr std::chrono::year kCommonYear{2027};  // without a leap day

}  // namespace

int dayOfYear(MonthDay day) {
  using namespace std::chrono;
  year_month_day date{kCommonYear, day.month(), day.day()};
  if (!date.ok()) date = kCommonYear / February / 28;
  return static_cast<int>((sys_days{date} - sys_days{kCommonYear / January / 1}).count());
}

int weekOf(MonthDay day) {
  return std::min(dayOfYear(day) / 7, kWeeksInYear - 1);
}

int monthOfWeek(int week) {
  using namespace std::chrono;
  const year_month_day middle(sys_days(kCommonYear / January / 1) + days{week * 7 + 3});
  return static_cast<int>(static_cast<unsigned>(middle.month()));
}

bool holds(WeekRange range, int week) {
  return range.first <= range.last ? range.first <= week && week <= range.last
                                   : week >= range.first || week <= range.last;
}

WeekRange weeksOfMonths(int firstMonth, int lastMonth) {
  using namespace std::chrono;
  const month from{static_cast<unsigned>(firstMonth)}, to{static_cast<unsigned>(lastMonth)};
  const year_month_day_last end{kCommonYear, month_day_last{to}};
  return {weekOf(from / day{1}), weekOf(to / end.day())};
}

std::optional<MonthDay> parseMonthDay(std::string_view text) {
  if (text.size() != 5 || text[2] != '-') return std::nullopt;
  const auto month = digits(text.substr(0, 2));
  const auto day = digits(text.substr(3, 2));
  if (!month || !day) return std::nullopt;
  const MonthDay result{std::chrono::month{*month}, std::chrono::day{*day}};
  return result.ok() ? std::optional(result) : std::nullopt;
}

std::string formatMonthDay(MonthDay day) {
  return fmt::format("{:02}-{:02}", static_cast<unsigned>(day.month()),
                     static_cast<unsigned>(day.day()));
}

std::optional<Date> parseDate(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = digits(text.substr(0, 4));
  const auto month = digits(text.substr(5, 2));
  const auto day = digits(text.substr(8, 2));
  if (!year || !month || !day) return std::nullopt;
  const Date result{std::chrono::year{static_cast<int>(*year)}, std::chrono::month{*month},
                    std::chrono::day{*day}};
  return result.ok() ? std::optional(result) : std::nullopt;
}

std::string formatDate(Date day) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                     static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
}

std::string readableMonthDay(MonthDay day) {
  return fmt::format("{} {}", static_cast<unsigned>(day.day()), readableMonth(day.month()));
}

std::string readableMonth(std::chrono::month month) {
  return std::string(kMonthNames[static_cast<unsigned>(month) - 1]);
}

}  // namespace tussock
