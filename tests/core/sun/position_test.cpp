// SPDX-License-Identifier: MIT
#include "core/sun/position.h"

#include <cmath>
#include <cstdio>
#include <fstream>
#include <string>

#include <gtest/gtest.h>

namespace tussock {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;

constexpr Angle degrees(double value) {
  return Angle::degrees(value);
}

double azimuthGap(Angle a, double b) {
  return std::abs(std::remainder(a.degrees() - b, 360.0));
}

UtcTime utc(int year, unsigned month, unsigned day, int hour, int minute, int second = 0) {
  return sys_days(Date(std::chrono::year(year), std::chrono::month(month), std::chrono::day(day))) +
         std::chrono::hours(hour) + std::chrono::minutes(minute) + std::chrono::seconds(second);
}

// Worked example of Reda and Andreas, NREL/TP-560-34302, table A5.1.
struct WorkedExample : testing::Test {
  UtcTime time = utc(2003, 10, 17, 19, 30, 30);
  SunPosition sun = sunPosition(time, degrees(39.742476), degrees(-105.1786));
};

TEST_F(WorkedExample, ZenithAndAzimuthAgree) {
  // The report's zenith includes 0.0163 degrees of refraction.
  EXPECT_NEAR(90.0 - sun.altitude.degrees(), 50.11162, 0.02);
  EXPECT_NEAR(sun.azimuth.degrees(), 194.34024, 0.02);
}

TEST_F(WorkedExample, AltitudeWithoutRefractionAgrees) {
  EXPECT_NEAR(sun.altitude.degrees(), 39.872046, 0.002);  // e0 of the report's code
}

TEST_F(WorkedExample, DeclinationAndEquationOfTimeAgree) {
  EXPECT_NEAR(solarDeclination(time).degrees(), -9.31434, 0.002);
  EXPECT_NEAR(equationOfTime(time), 14.641503, 0.01);
}

// Meeus, Astronomical Algorithms, 2nd ed., examples 25.b and 28.b: 1992 October 13, 0 h TD.
TEST(SunPositionTest, MeeusExampleAgrees) {
  const UtcTime time = utc(1992, 10, 12, 23, 59, 1);
  EXPECT_NEAR(solarDeclination(time).degrees(), -(7.0 + 47.0 / 60.0 + 1.74 / 3600.0), 0.001);
  EXPECT_NEAR(equationOfTime(time), 13.0 + 42.7 / 60.0, 0.02);
}

struct Reference {
  UtcTime time;
  double latitude, longitude, azimuth, altitude;
};

std::vector<Reference> readReferences() {
  std::ifstream file(std::string(TUSSOCK_TEST_DATA) + "/sun-positions.csv");
  std::string line;
  std::getline(file, line);
  std::vector<Reference> result;
  while (std::getline(file, line)) {
    int year = 0, hour = 0, minute = 0;
    unsigned month = 0, day = 0;
    Reference row{};
    if (std::sscanf(line.c_str(), "%d-%u-%uT%d:%dZ,%lf,%lf,%lf,%lf", &year, &month, &day, &hour,
                    &minute, &row.latitude, &row.longitude, &row.azimuth, &row.altitude) != 9)
      continue;
    row.time = utc(year, month, day, hour, minute);
    result.push_back(row);
  }
  return result;
}

// Topocentric, airless positions computed with astropy 5.2.1 for places and times at random.
TEST(SunPositionTest, TwoHundredPlacesAndTimesAgreeWithAstropy) {
  const std::vector<Reference> rows = readReferences();
  ASSERT_EQ(rows.size(), 200u);
  for (const Reference& row : rows) {
    const SunPosition sun = sunPosition(row.time, degrees(row.latitude), degrees(row.longitude));
    EXPECT_NEAR(sun.altitude.degrees(), row.altitude, 0.01) << row.latitude << ' ' << row.longitude;
    EXPECT_LT(azimuthGap(sun.azimuth, row.azimuth) * std::cos(sun.altitude.radians()), 0.01)
        << row.latitude << ' ' << row.longitude;
    EXPECT_LT(azimuthGap(sun.azimuth, row.azimuth), 0.03) << row.latitude << ' ' << row.longitude;
  }
}

// astropy 5.2.1 and PyEphem 4.1.4 for Minneapolis, 44.98 N 93.27 W, in 2026.
TEST(SunPositionTest, AYearInMinneapolisAgrees) {
  const Reference rows[]{{utc(2026, 3, 20, 18, 0), 0, 0, 172.782, 44.8438},
                         {utc(2026, 6, 21, 15, 0), 0, 0, 101.987, 45.1701},
                         {utc(2026, 6, 21, 18, 0), 0, 0, 170.713, 68.2420},
                         {utc(2026, 9, 22, 21, 0), 0, 0, 233.430, 30.8629},
                         {utc(2026, 12, 21, 18, 0), 0, 0, 177.221, 21.5319}};
  for (const Reference& row : rows) {
    const SunPosition sun = sunPosition(row.time, degrees(44.98), degrees(-93.27));
    EXPECT_NEAR(sun.altitude.degrees(), row.altitude, 0.03);
    EXPECT_LT(azimuthGap(sun.azimuth, row.azimuth), 0.03);
  }
}

// Spherical astronomy: at transit the sun stands at 90 - |latitude - declination|, less parallax.
TEST(SunPositionTest, TransitAltitudeFollowsFromDeclination) {
  for (const double latitude : {-60.0, -20.0, 0.0, 23.0, 44.98, 66.0})
    for (const Date day : {2026y / 3 / 20, 2026y / 6 / 21, 2026y / 12 / 21}) {
      const UtcTime transit = tussock::daylight(day, degrees(latitude), degrees(-93.27)).transit;
      const double altitude =
          sunPosition(transit, degrees(latitude), degrees(-93.27)).altitude.degrees();
      EXPECT_NEAR(altitude, 90.0 - std::abs(latitude - solarDeclination(transit).degrees()), 0.004);
    }
}

// PyEphem 4.1.4 for Minneapolis: noon altitudes at the solstices.
TEST(SunPositionTest, SolsticeNoonsInMinneapolisAgree) {
  const auto noonAltitude = [](Date day) {
    const UtcTime transit = tussock::daylight(day, degrees(44.98), degrees(-93.27)).transit;
    return sunPosition(transit, degrees(44.98), degrees(-93.27)).altitude.degrees();
  };
  EXPECT_NEAR(noonAltitude(2026y / 6 / 21), 68.4565, 0.005);
  EXPECT_NEAR(noonAltitude(2026y / 12 / 21), 21.5803, 0.005);
}

// NOAA's tables: about -14.2 minutes near 11 February, +16.4 near 3 November.
TEST(EquationOfTimeTest, ExtremesAreInFebruaryAndNovember) {
  double least = 0.0, most = 0.0;
  sys_days leastDay, mostDay;
  for (sys_days day = 2026y / 1 / 1; day < sys_days(2027y / 1 / 1); day += std::chrono::days(1)) {
    const double minutes = equationOfTime(day + 12h);
    if (minutes < least) least = minutes, leastDay = day;
    if (minutes > most) most = minutes, mostDay = day;
  }
  EXPECT_NEAR(least, -14.2, 0.2);
  EXPECT_NEAR(most, 16.4, 0.2);
  EXPECT_LE(std::abs((leastDay - sys_days(2026y / 2 / 11)).count()), 2);
  EXPECT_LE(std::abs((mostDay - sys_days(2026y / 11 / 3)).count()), 2);
}

// PyEphem 4.1.4, horizon -0:50 of the centre: 936.94 minutes on 21 June 2026 in Minneapolis;
// transit on that day at 18:14:57 UTC.
TEST(DaylightTest, MidsummerInMinneapolisAgrees) {
  const Daylight day = tussock::daylight(2026y / 6 / 21, degrees(44.98), degrees(-93.27));
  EXPECT_NEAR(day.hours * 60.0, 936.94, 1.0);
  EXPECT_LE(std::abs((day.transit - utc(2026, 6, 21, 18, 14, 57)).count()), 5);
  ASSERT_TRUE(day.sunrise && day.sunset);
  EXPECT_NEAR(sunPosition(*day.sunrise, degrees(44.98), degrees(-93.27)).altitude.degrees(), -0.833,
              0.005);
  EXPECT_NEAR(sunPosition(*day.sunset, degrees(44.98), degrees(-93.27)).altitude.degrees(), -0.833,
              0.005);
}

struct AlmanacDay {
  double latitude, longitude;
  Date day;
  UtcTime sunrise, sunset;
  double minutes;
};

// Computed with PyEphem 4.1.4 (Debian 12): horizon -0:50 of the sun's centre, no air, at sea level.
const AlmanacDay kAlmanac[] = {
    {44.98, -93.27, 2026y / 3 / 20, utc(2026, 3, 20, 12, 15, 59), utc(2026, 3, 21, 0, 25, 42),
     729.72},
    {44.98, -93.27, 2026y / 6 / 21, utc(2026, 6, 21, 10, 26, 29), utc(2026, 6, 22, 2, 3, 25),
     936.94},
    {44.98, -93.27, 2026y / 9 / 22, utc(2026, 9, 22, 12, 0, 19), utc(2026, 9, 23, 0, 10, 19),
     729.99},
    {44.98, -93.27, 2026y / 12 / 21, utc(2026, 12, 21, 13, 48, 13), utc(2026, 12, 21, 22, 34, 20),
     526.11},
    {38.4, -86.9, 2026y / 3 / 20, utc(2026, 3, 20, 11, 50, 57), utc(2026, 3, 20, 23, 59, 37),
     728.66},
    {38.4, -86.9, 2026y / 6 / 21, utc(2026, 6, 21, 10, 24, 4), utc(2026, 6, 22, 1, 14, 52), 890.79},
    {38.4, -86.9, 2026y / 9 / 22, utc(2026, 9, 22, 11, 35, 27), utc(2026, 9, 22, 23, 44, 25),
     728.96},
    {38.4, -86.9, 2026y / 12 / 21, utc(2026, 12, 21, 13, 1, 10), utc(2026, 12, 21, 22, 30, 24),
     569.23},
    {-35, 149, 2026y / 3 / 20, utc(2026, 3, 19, 20, 6, 43), utc(2026, 3, 20, 8, 15, 50), 729.13},
    {-35, 149, 2026y / 6 / 21, utc(2026, 6, 20, 21, 11, 44), utc(2026, 6, 21, 6, 59, 43), 587.97},
    {-35, 149, 2026y / 9 / 22, utc(2026, 9, 21, 19, 54, 11), utc(2026, 9, 22, 8, 0, 7), 725.93},
    {-35, 149, 2026y / 12 / 21, utc(2026, 12, 20, 18, 46, 23), utc(2026, 12, 21, 9, 17, 21),
     870.96}};

TEST(DaylightTest, SunriseSunsetAndLengthAgreeWithAnAlmanac) {
  for (const AlmanacDay& row : kAlmanac) {
    SCOPED_TRACE(std::to_string(row.latitude) + " on " + formatDate(row.day));
    const Daylight day = tussock::daylight(row.day, degrees(row.latitude), degrees(row.longitude));
    ASSERT_TRUE(day.sunrise && day.sunset);
    EXPECT_LE(std::abs((*day.sunrise - row.sunrise).count()), 20);
    EXPECT_LE(std::abs((*day.sunset - row.sunset).count()), 20);
    EXPECT_NEAR(day.hours * 60.0, row.minutes, 0.5);
  }
}

TEST(DaylightTest, MidnightSunLastsAllDay) {
  const Daylight day = tussock::daylight(2026y / 6 / 21, degrees(70.0), degrees(25.0));
  EXPECT_EQ(day.hours, 24.0);
  EXPECT_FALSE(day.sunrise || day.sunset);
}

TEST(DaylightTest, PolarNightHasNoHours) {
  const Daylight day = tussock::daylight(2026y / 12 / 21, degrees(70.0), degrees(25.0));
  EXPECT_EQ(day.hours, 0.0);
  EXPECT_FALSE(day.sunrise || day.sunset);
}

TEST(DaylightTest, TransitIsOnTheDayAskedForAtAnyLongitude) {
  for (const double longitude : {-179.9, -93.0, 0.0, 120.0, 179.9}) {
    const Daylight day = tussock::daylight(2026y / 4 / 14, degrees(40.0), degrees(longitude));
    const auto localNoon =
        utc(2026, 4, 14, 12, 0) - std::chrono::seconds(std::llround(longitude * 240.0));
    EXPECT_LT(std::abs((day.transit - localNoon).count()), 18 * 60) << longitude;
    EXPECT_TRUE(*day.sunrise < day.transit && day.transit < *day.sunset) << longitude;
  }
}

TEST(DaylightTest, LongitudesAFullTurnApartAreOnePlace) {
  const Daylight west = tussock::daylight(2026y / 4 / 14, degrees(40.0), degrees(-100.0));
  const Daylight east = tussock::daylight(2026y / 4 / 14, degrees(40.0), degrees(260.0));
  EXPECT_LE(std::abs((west.transit - east.transit).count()), 1);
}

TEST(DaylightTest, DirectSunTimeIsShorterThanDaylight) {
  const Daylight sun = timeAbove(Angle(), 2026y / 6 / 21, degrees(44.98), degrees(-93.27));
  const Daylight day = tussock::daylight(2026y / 6 / 21, degrees(44.98), degrees(-93.27));
  EXPECT_GT(day.hours - sun.hours, 8.0 / 60.0);
  EXPECT_LT(day.hours - sun.hours, 16.0 / 60.0);
}

}  // namespace
}  // namespace tussock
