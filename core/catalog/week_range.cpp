// SPDX-License-Identifier: MIT
#include "core/catalog/week_range.h"

#include <charconv>

#include <fmt/format.h>

namespace tussock {

namespace {

// Counted in a common year, as weekOf does.
MonthDay dayAt(int day) {
  using namespace std::chrono;
  const year_month_day date(sys_days(year{2025} / January / 1) + days{day});
  return date.month() / date.day();
}

// Reads a week off the front of `text`.
std::optional<int> takeWeek(std::string_view& text) {
  int week = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), week);
  if (error != std::errc{} || week < 1 || week > kWeeksInYear) return std::nullopt;
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  return week - 1;
}

bool take(std::string_view& text, std::string_view word) {
  if (!text.starts_with(word)) return false;
  text.remove_prefix(word.size());
  return true;
}

}  // namespace

int lengthOf(WeekRange range) {
  return (range.last - range.first + kWeeksInYear) % kWeeksInYear + 1;
}

WeekSet weeksOf(WeekRange range) {
  WeekSet weeks = 0;
  for (int i = 0; i < lengthOf(range); ++i)
    weeks |= WeekSet{1} << ((range.first + i) % kWeeksInYear);
  return weeks;
}

std::string formatWeeks(WeekRange range) {
  return fmt::format("weeks {} to {}", range.first + 1, range.last + 1);
}

std::optional<WeekRange> parseWeeks(std::string_view text) {
  if (!take(text, "weeks ")) return std::nullopt;
  const auto first = takeWeek(text);
  if (!first || !take(text, " to ")) return std::nullopt;
  const auto last = takeWeek(text);
  if (!last || !text.empty()) return std::nullopt;
  return WeekRange{*first, *last};
}

MonthDay firstDayOf(int week) {
  return dayAt(week * 7);
}

MonthDay lastDayOf(int week) {
  return week == kWeeksInYear - 1 ? dayAt(364) : dayAt(week * 7 + 6);
}

DayRange daysWithin(WeekRange range, const GrowingSeason& season) {
  return {range.first == weekOf(season.first) ? season.first : firstDayOf(range.first),
          range.last == weekOf(season.last) ? season.last : lastDayOf(range.last)};
}

std::string daysInWords(WeekRange range, const GrowingSeason& season) {
  const DayRange days = daysWithin(range, season);
  return fmt::format("{} to {}", readableMonthDay(days.first), readableMonthDay(days.last));
}

double weeksLong(DayRange days) {
  using namespace std::chrono;
  const sys_days from(year{2025} / days.first), to(year{2025} / days.last);
  const int apart = static_cast<int>((to - from).count());
  return (apart < 0 ? apart + 366 : apart + 1) / 7.0;
}

}  // namespace tussock
