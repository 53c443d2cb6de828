// SPDX-License-Identifier: MIT
#include "core/units/date.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

using namespace std::chrono;

TEST(Week, RunsFromZeroToFiftyOne) {
  EXPECT_EQ(weekOf(January / 1), 0);
  EXPECT_EQ(weekOf(January / 7), 0);
  EXPECT_EQ(weekOf(January / 8), 1);
  EXPECT_EQ(weekOf(December / 31), 51);
}

TEST(DayOfYear, CountsACommonYear) {
  EXPECT_EQ(dayOfYear(January / 1), 0);
  EXPECT_EQ(dayOfYear(March / 1), 59);
  EXPECT_EQ(dayOfYear(February / 29), dayOfYear(February / 28));
  EXPECT_EQ(dayOfYear(December / 31), 364);
}

TEST(MonthDayText, ReadsAndWrites) {
  EXPECT_EQ(parseMonthDay("04-20"), MonthDay(April / 20));
  EXPECT_EQ(parseMonthDay("02-29"), MonthDay(February / 29));
  EXPECT_EQ(formatMonthDay(April / 20), "04-20");
  EXPECT_EQ(readableMonthDay(April / 20), "20 April");
  for (const char* text : {"", "4-20", "13-01", "04-31", "00-10", "ab-cd", "04/20"})
    EXPECT_FALSE(parseMonthDay(text).has_value()) << text;
}

TEST(DateText, FollowsIso8601) {
  EXPECT_EQ(parseDate("2027-04-14"), Date(2027y / April / 14));
  EXPECT_EQ(formatDate(2027y / April / 14), "2027-04-14");
  for (const char* text : {"2027-02-29", "2027-4-14", "27-04-14", "2027-04-14T"})
    EXPECT_FALSE(parseDate(text).has_value()) << text;
  EXPECT_TRUE(parseDate("2028-02-29").has_value());
}

}  // namespace
}  // namespace tussock
