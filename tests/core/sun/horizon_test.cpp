// SPDX-License-Identifier: MIT
#include "core/sun/horizon.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/sun/sun_days.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

SkylinePoint at(double azimuth, double elevation) {
  return {Angle::degrees(azimuth), Angle::degrees(elevation)};
}

Horizon behind(std::vector<SkylinePoint> skyline) {
  Settings settings;
  settings.skyline = std::move(skyline);
  return Horizon(settings);
}

Horizon sloping(double slope, double aspect) {
  Settings settings;
  settings.slope = Angle::degrees(slope);
  settings.aspect = Angle::degrees(aspect);
  return Horizon(settings);
}

SunPosition sunStanding(double azimuth, double altitude) {
  return {Angle::degrees(azimuth), Angle::degrees(altitude)};
}

double hoursUp(Date day, double latitude, const Horizon& horizon, int stepMinutes = 10) {
  double hours = 0.0;
  for (const SunStep& step : stepsOf(day, Angle::degrees(latitude), {}, stepMinutes, horizon))
    hours += step.hours;
  return hours;
}

TEST(SkylineTest, PointsAreJoinedByStraightLines) {
  const Horizon horizon = behind({at(180, 20), at(90, 10), at(270, 4)});
  EXPECT_NEAR(horizon.elevationAt(Angle::degrees(90)).degrees(), 10.0, 1e-9);
  EXPECT_NEAR(horizon.elevationAt(Angle::degrees(135)).degrees(), 15.0, 1e-9);
  EXPECT_NEAR(horizon.elevationAt(Angle::degrees(225)).degrees(), 12.0, 1e-9);
}

TEST(SkylineTest, RunsOnOverNorth) {
  const Horizon horizon = behind({at(350, 8), at(20, 2), at(180, 2)});
  EXPECT_NEAR(horizon.elevationAt(Angle::degrees(0)).degrees(), 6.0, 1e-9);
  EXPECT_NEAR(horizon.elevationAt(Angle::degrees(5)).degrees(), 5.0, 1e-9);
  EXPECT_NEAR(horizon.elevationAt(Angle::degrees(365)).degrees(), 5.0, 1e-9);
}

TEST(SkylineTest, OnePointIsOneHeightAllRound) {
  const Horizon horizon = behind({at(77, 12)});
  for (const double azimuth : {0.0, 77.0, 200.0, 359.0})
    EXPECT_NEAR(horizon.elevationAt(Angle::degrees(azimuth)).degrees(), 12.0, 1e-9);
}

TEST(SkylineTest, NeverBelowLevelAndNothingFromBadPoints) {
  const Horizon horizon = behind({at(90, -10), at(NAN, 30), at(270, -3)});
  EXPECT_EQ(horizon.elevationAt(Angle::degrees(100)).degrees(), 0.0);
  EXPECT_TRUE(behind({at(10, NAN)}).isOpen());
}

TEST(SkylineTest, HidesTheSunBelowIt) {
  const Horizon horizon = behind({at(90, 15), at(270, 15)});
  EXPECT_FALSE(horizon.clears(sunStanding(120, 14.9)));
  EXPECT_TRUE(horizon.clears(sunStanding(120, 15.1)));
  EXPECT_FALSE(Horizon().clears(sunStanding(120, -0.1)));
}

// With the sun's centre at 15 degrees, the hour angle H at declination d and latitude p holds
// sin 15 = sin p sin d + cos p cos d cos H (Meeus, Astronomical Algorithms, 13.6).
TEST(SkylineTest, LevelSkylineCutsBothEndsOfTheDay) {
  const Date day = 2026y / 6 / 21;
  const double p = 42.0 * std::numbers::pi / 180.0;
  const double d = solarDeclination(std::chrono::sys_days(day) + std::chrono::hours(12)).radians();
  const double h =
      std::acos((std::sin(15.0 * std::numbers::pi / 180.0) - std::sin(p) * std::sin(d)) /
                (std::cos(p) * std::cos(d)));
  const double expected = 2.0 * h * 12.0 / std::numbers::pi;
  EXPECT_NEAR(hoursUp(day, 42.0, behind({at(0, 15)})), expected, 0.01);
  EXPECT_NEAR(hoursUp(day, 42.0, behind({at(0, 15)}), 60), expected, 0.01);
}

TEST(SlopeTest, SunBehindTheSlopeIsHidden) {
  const Horizon horizon = sloping(20, 0);  // faces north
  EXPECT_FALSE(horizon.clears(sunStanding(180, 19.9)));
  EXPECT_TRUE(horizon.clears(sunStanding(180, 20.1)));
  EXPECT_TRUE(horizon.clears(sunStanding(0, 0.1)));
  EXPECT_NEAR(horizon.rise().y, -std::tan(20.0 * std::numbers::pi / 180.0), 1e-12);
}

// Ground that faces north at 42 N by 30 degrees lies as level ground does at 72 N, on the same
// meridian (the "equivalent slope": Lee, Evaluation of Solar Beam Irradiation as a Climatic
// Parameter of Mountain Watersheds, 1963). It has the sun while that and the true horizon allow.
TEST(SlopeTest, SlopeAlongTheMeridianIsAnotherLatitude) {
  for (const Date day : {2026y / 1 / 15, 2026y / 3 / 10, 2026y / 10 / 20, 2026y / 12 / 1}) {
    const double there = timeAbove({}, day, Angle::degrees(72), {}).hours;
    EXPECT_NEAR(hoursUp(day, 42.0, sloping(30, 0)), there, 0.03) << there;
  }
}

TEST(SlopeTest, BadSlopesAreLevel) {
  for (const double slope : {0.0, -5.0, 61.0, static_cast<double>(NAN)})
    EXPECT_TRUE(sloping(slope, 90).isOpen()) << slope;
  EXPECT_TRUE(sloping(10, NAN).isOpen());
}

}  // namespace
}  // namespace tussock
