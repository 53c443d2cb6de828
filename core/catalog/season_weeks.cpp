// SPDX-License-Identifier: MIT
#include "core/catalog/season_weeks.h"

#include <charconv>

namespace tussock {

namespace {

constexpr int kMonthsInYear = 12;

bool isMonth(std::string_view column) {
  return column == "bloom_start_month" || column == "bloom_end_month";
}

bool isWeek(std::string_view column) {
  return column == "bloom_start_week" || column == "bloom_end_week" || column == "up_by_week";
}

void turnMonth(std::optional<int>& month) {
  if (month) month = halfAYearFromMonth(*month);
}

// Counted from 1, as the table does.
void turnWeek(std::optional<int>& week) {
  if (week) week = halfAYearFromWeek(*week - 1) + 1;
}

}  // namespace

std::vector<int> seasonWeeks(const Settings& settings) {
  const GrowingSeason season = growingSeason(settings);
  std::vector<int> weeks;
  const int last = weekOf(season.last);
  for (int week = weekOf(season.first);; week = (week + 1) % kWeeksInYear) {
    weeks.push_back(week);
    if (week == last) return weeks;
  }
}

WeekSet setOf(const std::vector<int>& weeks) {
  WeekSet set = 0;
  for (const int week : weeks) set |= WeekSet{1} << week;
  return set;
}

std::vector<WeekRange> gapsIn(WeekSet weeks, const std::vector<int>& season) {
  std::vector<WeekRange> gaps;
  bool open = false;
  for (const int week : season) {
    if ((weeks >> week & 1U) != 0) {
      open = false;
    } else if (open) {
      gaps.back().last = week;
    } else {
      gaps.push_back({week, week});
      open = true;
    }
  }
  return gaps;
}

WeekSet weeksOf(SeasonThird third, const std::vector<int>& season) {
  const std::size_t part = static_cast<std::size_t>(third);
  WeekSet weeks = 0;
  for (std::size_t i = part * season.size() / 3; i < (part + 1) * season.size() / 3; ++i)
    weeks |= WeekSet{1} << season[i];
  return weeks;
}

WeekRange rangeOf(SeasonThird third, const std::vector<int>& season) {
  const auto part = static_cast<std::size_t>(third);
  return {season[part * season.size() / 3], season[(part + 1) * season.size() / 3 - 1]};
}

int halfAYearFromMonth(int month) {
  return (month - 1 + kMonthsInYear / 2) % kMonthsInYear + 1;
}

int halfAYearFromWeek(int week) {
  return (week + kWeeksInYear / 2) % kWeeksInYear;
}

int northernWeek(int week, Hemisphere where) {
  return where == Hemisphere::North ? week : halfAYearFromWeek(week);
}

Species halfAYearOn(Species species) {
  turnMonth(species.bloomFirstMonth), turnMonth(species.bloomLastMonth);
  turnWeek(species.bloomFirstWeek), turnWeek(species.bloomLastWeek);
  turnWeek(species.upByWeek);
  return species;
}

// Plants are as far on at a place of the year in one half as in the other.
int placeInYear(int week, Hemisphere where) {
  return northernWeek(week, where);
}

int weekAtPlace(int place, Hemisphere where) {
  return northernWeek(place, where);
}

int monthAtPlace(int place, Hemisphere where) {
  return where == Hemisphere::North ? place + 1 : halfAYearFromMonth(place + 1);
}

int firstBloomPlace(const Species& species, Hemisphere where) {
  const auto weeks = species.bloomWeeks();
  return weeks ? placeInYear(weeks->first, where) : kWeeksInYear;
}

bool tellsTime(std::string_view column) {
  return isMonth(column) || isWeek(column);
}

// What is no month or week is left for the reader of the table to tell of.
std::string halfAYearOn(std::string_view column, const std::string& value) {
  if (!tellsTime(column)) return value;
  int number = 0;
  const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), number);
  const int most = isMonth(column) ? kMonthsInYear : kWeeksInYear;
  if (error != std::errc{} || end != value.data() + value.size() || number < 1 || number > most)
    return value;
  return std::to_string(isMonth(column) ? halfAYearFromMonth(number)
                                        : halfAYearFromWeek(number - 1) + 1);
}

}  // namespace tussock
