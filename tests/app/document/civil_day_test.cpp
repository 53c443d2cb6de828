// SPDX-License-Identifier: MIT
// Clock changes by the United States' rule (15 U.S.C. 260a: second Sunday of March to first Sunday
// of November, at 2 o'clock); New York is five hours behind UTC in winter and four in summer.
#include "app/document/civil_day.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

using namespace std::chrono_literals;

Settings in(const char* zone) {
  Settings settings;
  settings.timeZone = zone;
  return settings;
}

UtcTime utc(Date day, int hour, int minute = 0) {
  return std::chrono::sys_days(day) + std::chrono::hours(hour) + std::chrono::minutes(minute);
}

TEST(CivilDayTest, TellsSummerTimeFromWinterTime) {
  const CivilDay winter(Date(2027y / 1 / 15), in("America/New_York"));
  const CivilDay summer(Date(2027y / 7 / 15), in("America/New_York"));
  EXPECT_EQ(winter.at(12 * 60), utc(2027y / 1 / 15, 17));
  EXPECT_EQ(summer.at(12 * 60), utc(2027y / 7 / 15, 16));
  EXPECT_EQ(summer.clock(utc(2027y / 7 / 15, 16, 5)), QStringLiteral("12:05"));
  EXPECT_EQ(winter.zone(winter.at(0)), QStringLiteral("EST"));
  EXPECT_EQ(summer.zone(summer.at(0)), QStringLiteral("EDT"));
}

TEST(CivilDayTest, TheDayOfTheChangeIsAnHourShortOrLong) {
  const auto hours = [](Date day) {
    const CivilDay civil(day, in("America/New_York"));
    return std::chrono::duration_cast<std::chrono::hours>(civil.at(kMinutesInDay) - civil.at(0));
  };
  EXPECT_EQ(hours(2027y / 3 / 13), 24h);
  EXPECT_EQ(hours(2027y / 3 / 14), 23h);
  EXPECT_EQ(hours(2027y / 11 / 7), 25h);
}

TEST(CivilDayTest, ASkippedTimeIsTheOneClocksJumpTo) {
  const CivilDay day(Date(2027y / 3 / 14), in("America/New_York"));
  EXPECT_EQ(day.at(2 * 60 + 30), utc(2027y / 3 / 14, 7, 30));
  EXPECT_EQ(day.clock(day.at(2 * 60 + 30)), QStringLiteral("03:30"));
}

TEST(CivilDayTest, ATimeShownTwiceIsTheFirst) {
  const CivilDay autumn(Date(2026y / 11 / 1), in("America/New_York"));
  EXPECT_EQ(autumn.at(75), utc(2026y / 11 / 1, 5, 15));
  EXPECT_EQ(autumn.zone(autumn.at(75)), QStringLiteral("EDT"));
  EXPECT_EQ(autumn.at(119), utc(2026y / 11 / 1, 5, 59));
  EXPECT_EQ(autumn.at(120), utc(2026y / 11 / 1, 7));
  EXPECT_EQ(autumn.at(59), utc(2026y / 11 / 1, 4, 59));
  // Lord Howe Island puts its clocks back by half an hour, on the first Sunday of April.
  const CivilDay island(Date(2027y / 4 / 4), in("Australia/Lord_Howe"));
  EXPECT_EQ(island.at(105), utc(2027y / 4 / 3, 14, 45));
}

TEST(CivilDayTest, MinutesRunOnBeforeAndAfterTheDay) {
  const CivilDay day(Date(2027y / 6 / 1), in("Europe/Berlin"));
  EXPECT_EQ(day.at(-30), utc(2027y / 5 / 31, 21, 30));
  EXPECT_EQ(day.minuteOf(utc(2027y / 5 / 31, 21, 30)), -30);
  EXPECT_EQ(day.minuteOf(utc(2027y / 6 / 1, 22, 15)), kMinutesInDay + 15);
}

TEST(CivilDayTest, AZoneTheSystemDoesNotKnowCountsAsUniversalTime) {
  EXPECT_EQ(CivilDay(Date(2027y / 6 / 1), in("Nowhere/Atall")).at(60), utc(2027y / 6 / 1, 1));
}

}  // namespace
}  // namespace tussock
