// SPDX-License-Identifier: MIT
// The sun's place and the length of the day beside published tables and worked examples.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/sun/position.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;

constexpr Angle degrees(double value) {
  return Angle::degrees(value);
}

UtcTime utc(Date day, int hour, int minute, int second = 0) {
  return sys_days(day) + std::chrono::hours(hour) + std::chrono::minutes(minute) +
         std::chrono::seconds(second);
}

// NOAA Global Monitoring Laboratory, NOAA_Solar_Calculations_day.xls, row 2: 21 June 2010, 00:06 at
// UTC-7, 40 N 105 W. Its series are good to 0.01 degrees.
struct NoaaSpreadsheet : testing::Test {
  UtcTime time = utc(2010y / 6 / 21, 7, 6);
};

TEST_F(NoaaSpreadsheet, DeclinationAndEquationOfTimeAgree) {
  EXPECT_NEAR(solarDeclination(time).degrees(), 23.43837, 0.005);
  EXPECT_NEAR(equationOfTime(time), -1.71537, 0.03);
}

TEST_F(NoaaSpreadsheet, SunUnderTheNorthernHorizonAgrees) {
  const SunPosition sun = sunPosition(time, degrees(40), degrees(-105));
  EXPECT_NEAR(sun.altitude.degrees(), -26.55376, 0.01);
  EXPECT_NEAR(sun.azimuth.degrees(), 1.09867, 0.01);
}

// Its hour angle of sunrise, 112.61041 degrees from noon, for a centre 0.833 degrees below the
// horizon; NOAA gives the times as good to a minute between 72 N and 72 S.
TEST_F(NoaaSpreadsheet, SunriseIsByItsConvention) {
  const Daylight day = tussock::daylight(2010y / 6 / 21, degrees(40), degrees(-105));
  EXPECT_NEAR(day.hours * 60.0, 2.0 * 112.61041 * 4.0, 1.0);
  ASSERT_TRUE(day.sunrise && day.sunset);
  const double half = 112.61041 * 240.0;
  EXPECT_NEAR(static_cast<double>((day.transit - *day.sunrise).count()), half, 60.0);
  EXPECT_NEAR(static_cast<double>((*day.sunset - day.transit).count()), half, 60.0);
}

// Allen and others, Crop Evapotranspiration, FAO Irrigation and Drainage Paper 56 (1998), examples
// 8 and 9: 3 September at 20 S has a declination of 0.120 rad by a short series and a sunset hour
// angle of 1.527 rad, so 11.67 hours (there rounded to 11.7) from 0 degrees to 0 degrees.
TEST(FaoExample, DayLengthAgrees) {
  EXPECT_NEAR(solarDeclination(utc(2026y / 9 / 3, 12, 0)).radians(), 0.120, 0.01);
  const Daylight day = timeAbove(Angle(), 2026y / 9 / 3, degrees(-20), degrees(0));
  EXPECT_NEAR(day.hours, 24.0 / std::numbers::pi * 1.527, 0.05);
}

// Zenith and azimuth by NREL's Solar Position Algorithm (its public calculator, as transcribed).
// Zeniths include refraction where the sun is up, by no more than 0.1 degrees at 8.8 degrees.
struct NrelRow {
  UtcTime time;
  double latitude, longitude, zenith, azimuth, refraction;
};

TEST(NrelCalculator, PlacesOfTheSunAgree) {
  const NrelRow rows[]{
      {utc(2024y / 6 / 21, 3, 0), 46.85, -121.76, 81.2140907566, 295.1503660142, 0.1},
      {utc(2025y / 12 / 21, 22, 0), 40.7128, -74.006, 95.5036226452, 243.6213032297, 0.005},
      {utc(2025y / 6 / 21, 10, 0), 48.2082, 16.3738, 27.1685641237, 150.7305003541, 0.01}};
  for (const NrelRow& row : rows) {
    const SunPosition sun = sunPosition(row.time, degrees(row.latitude), degrees(row.longitude));
    const double zenith = 90.0 - sun.altitude.degrees();
    EXPECT_GE(zenith, row.zenith - 0.005) << row.latitude;
    EXPECT_LE(zenith, row.zenith + row.refraction + 0.005) << row.latitude;
    EXPECT_NEAR(sun.azimuth.degrees(), row.azimuth, 0.03) << row.latitude;
  }
}

// Equinoxes and solstices of 2026, computed with astronomy-engine 2.1.19: 20 March 14:45:36, 21
// June 08:25:00, 23 September 00:05:39, 21 December 20:50:22 UTC.
TEST(SeasonsTest, EquinoxesAreWhereTheDeclinationIsNone) {
  for (const UtcTime time : {utc(2026y / 3 / 20, 14, 45, 36), utc(2026y / 9 / 23, 0, 5, 39)})
    EXPECT_NEAR(solarDeclination(time).degrees(), 0.0, 0.001);
}

TEST(SeasonsTest, SolsticesAreWhereItTurns) {
  for (const UtcTime time : {utc(2026y / 6 / 21, 8, 25), utc(2026y / 12 / 21, 20, 50, 22)}) {
    const double there = std::abs(solarDeclination(time).degrees());
    EXPECT_NEAR(there, 23.436, 0.003);
    EXPECT_GT(there, std::abs(solarDeclination(time - 24h).degrees()));
    EXPECT_GT(there, std::abs(solarDeclination(time + 24h).degrees()));
  }
}

// Poles: the sun is up for half the year, and refraction and radius add days at both ends.
TEST(PolarTest, YearAtThePolesIsOneDayAndOneNight) {
  for (const double latitude : {89.99, -89.99}) {
    int up = 0;
    for (sys_days day = 2026y / 1 / 1; day < sys_days(2027y / 1 / 1); day += std::chrono::days(1))
      up += tussock::daylight(Date(day), degrees(latitude), {}).hours >= 12.0;
    EXPECT_NEAR(up, latitude > 0.0 ? 190 : 183, 5) << latitude;
  }
}

// At a pole the altitude is the declination, less up to 8.8 seconds of arc of parallax, which the
// sun climbs in 9 minutes near an equinox; so the pole's one day begins or ends just beside the
// equinoxes above, at whatever hour that is.
TEST(PolarTest, TheDayOfAPoleBeginsAtOneEquinoxAndEndsAtTheOther) {
  const UtcTime spring = utc(2026y / 3 / 20, 14, 45, 36), autumn = utc(2026y / 9 / 23, 0, 5, 39);
  const Daylight first = timeAbove(Angle(), 2026y / 3 / 20, degrees(90), {});
  ASSERT_TRUE(first.sunrise);
  EXPECT_FALSE(first.sunset);
  EXPECT_GT(*first.sunrise, spring);
  EXPECT_LT(*first.sunrise, spring + 12min);
  EXPECT_NEAR(first.hours, 9.3, 0.2) << "until midnight by the sun";
  const Daylight end = timeAbove(Angle(), 2026y / 9 / 23, degrees(90), {});
  ASSERT_TRUE(end.sunset);
  EXPECT_FALSE(end.sunrise);
  EXPECT_LT(*end.sunset, autumn);
  EXPECT_GT(*end.sunset, autumn - 12min);
  EXPECT_EQ(timeAbove(Angle(), 2026y / 3 / 19, degrees(90), {}).hours, 0.0);
  EXPECT_EQ(timeAbove(Angle(), 2026y / 3 / 21, degrees(90), {}).hours, 24.0);
  const Daylight south = timeAbove(Angle(), 2026y / 3 / 20, degrees(-90), {});
  ASSERT_TRUE(south.sunset);
  EXPECT_FALSE(south.sunrise);
  EXPECT_LT(*south.sunset, spring);
  EXPECT_GT(*south.sunset, spring - 12min);
}

// By the minute, as the sun's place tells it.
TEST(PolarTest, TheTimeUpIsThatOfTheSunsPlaceNearThePoles) {
  for (const double latitude : {90.0, 89.95, -89.9, 89.5, 88.0, 75.0})
    for (sys_days day = 2026y / 3 / 17; day < sys_days(2026y / 3 / 24);
         day += std::chrono::days(1)) {
      const Daylight found = timeAbove(Angle(), Date(day), degrees(latitude), degrees(20));
      int minutes = 0;
      for (UtcTime at = found.transit - 12h + 30s; at < found.transit + 12h; at += 1min)
        minutes += sunPosition(at, degrees(latitude), degrees(20)).altitude > Angle();
      EXPECT_NEAR(found.hours * 60.0, minutes, 1.5)
          << latitude << ", " << unsigned(Date(day).day());
    }
}

}  // namespace
}  // namespace tussock
