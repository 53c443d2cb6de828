// SPDX-License-Identifier: MIT
#include "core/sun/direct_light.h"

#include <gtest/gtest.h>

#include "core/sun/horizon.h"
#include "core/sun/position.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

class DirectLight : public testing::Test {
 protected:
  DirectLight() {
    settings.latitude = Angle::degrees(40);
    settings.longitude = Angle::degrees(0);
  }
  [[nodiscard]] std::vector<LightSpan> spans() const {
    const UtcTime midnight = std::chrono::sys_days(day);
    return directLight(midnight, midnight + 24h, settings);
  }
  [[nodiscard]] SunPosition sunAt(UtcTime time) const {
    return sunPosition(time, settings.latitude, settings.longitude);
  }
  Settings settings;
  const Date day = std::chrono::year(2027) / 3 / 20;
};

// Open and level ground: from 0 to 0 degrees, as the almanac part has it.
TEST_F(DirectLight, OnOpenGroundItIsTheTimeThatTheSunIsUp) {
  const auto found = spans();
  const Daylight up = timeAbove(Angle(), day, settings.latitude, settings.longitude);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_LE(std::chrono::abs(found[0].from - *up.sunrise), 60s);
  EXPECT_LE(std::chrono::abs(found[0].to - *up.sunset), 60s);
}

// A hill of 20 degrees all along the east: the sun comes over it when it stands 20 degrees high.
TEST_F(DirectLight, ItBeginsWhenTheSunStandsOverTheHill) {
  const Angle high = Angle::degrees(20);
  settings.skyline = {{Angle::degrees(1), high},
                      {Angle::degrees(179), high},
                      {Angle::degrees(180), Angle()},
                      {Angle::degrees(359), Angle()}};
  const auto found = spans();
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(sunAt(found[0].from).altitude.degrees(), 20.0, 0.25);  // a degree is four minutes
  EXPECT_LT(sunAt(found[0].from).azimuth.degrees(), 179.0);
  EXPECT_NEAR(sunAt(found[0].to).altitude.degrees(), 0.0, 0.25);
}

TEST_F(DirectLight, AHighRidgeToTheSouthSplitsTheDay) {
  settings.skyline = {{Angle::degrees(160), Angle()},
                      {Angle::degrees(170), Angle::degrees(70)},
                      {Angle::degrees(190), Angle::degrees(70)},
                      {Angle::degrees(200), Angle()}};
  EXPECT_EQ(spans().size(), 2u);
}

TEST_F(DirectLight, ThereIsNoneInPolarNight) {
  settings.latitude = Angle::degrees(80);
  const UtcTime midnight = std::chrono::sys_days(std::chrono::year(2027) / 12 / 21);
  EXPECT_TRUE(directLight(midnight, midnight + 24h, settings).empty());
}

}  // namespace
}  // namespace tussock
