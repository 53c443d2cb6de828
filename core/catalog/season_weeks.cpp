// SPDX-License-Identifier: MIT
#include "core/catalog/season_weeks.h"

namespace tussock {

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

WeekSet weeksOf(SeasonThird third, const std::vector<int>& season) {
  const std::size_t part = static_cast<std::size_t>(third);
  WeekSet weeks = 0;
  for (std::size_t i = part * season.size() / 3; i < (part + 1) * season.size() / 3; ++i)
    weeks |= WeekSet{1} << season[i];
  return weeks;
}

}  // namespace tussock
