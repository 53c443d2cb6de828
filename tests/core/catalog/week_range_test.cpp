// SPDX-License-Identifier: MIT
#include "core/catalog/week_range.h"

#include <bit>

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(WeekRange, ReadsBackAsWritten) {
  EXPECT_EQ(formatWeeks({17, 19}), "weeks 18 to 20");
  for (const WeekRange range : {WeekRange{0, 0}, WeekRange{17, 19}, WeekRange{50, 3}})
    EXPECT_EQ(parseWeeks(formatWeeks(range)), range);
}

TEST(WeekRange, RefusesOtherText) {
  for (const char* text : {"", "weeks", "weeks 0 to 3", "weeks 3 to 53", "weeks 3 to 4 ", "3 to 4"})
    EXPECT_FALSE(parseWeeks(text).has_value()) << text;
}

TEST(WeekRange, RunsOverNewYear) {
  EXPECT_EQ(lengthOf({50, 1}), 4);
  EXPECT_EQ(std::popcount(weeksOf(WeekRange{50, 1})), 4);
  EXPECT_NE(weeksOf(WeekRange{50, 1}) & 1U, 0U);
}

TEST(WeekRange, HasTheDaysOfACommonYear) {
  using namespace std::chrono;
  EXPECT_EQ(firstDayOf(0), January / 1);
  EXPECT_EQ(lastDayOf(0), January / 7);
  EXPECT_EQ(firstDayOf(51), December / 24);
  EXPECT_EQ(lastDayOf(51), December / 31);
  for (int week = 0; week < kWeeksInYear; ++week) {
    EXPECT_EQ(weekOf(firstDayOf(week)), week);
    EXPECT_EQ(weekOf(lastDayOf(week)), week);
  }
}

}  // namespace
}  // namespace tussock
