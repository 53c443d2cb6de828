// SPDX-License-Identifier: MIT
#include "app/look/sun_scale.h"

#include <gtest/gtest.h>

#include "app/look/oklab.h"

namespace tussock {
namespace {

// Ottosson 2020 gives OKLab of sRGB white as (1, 0, 0); the red primary as (0.628, 0.225, 0.126)
// (also CSS Color Module Level 4, section 9.3 examples).
TEST(Oklab, AgreesWithPublishedValues) {
  const Oklab white = toOklab(Qt::white), red = toOklab(Qt::red);
  EXPECT_NEAR(white.lightness, 1.0, 1e-3);
  EXPECT_NEAR(white.a, 0.0, 1e-3);
  EXPECT_NEAR(white.b, 0.0, 1e-3);
  EXPECT_NEAR(red.lightness, 0.628, 1e-3);
  EXPECT_NEAR(red.a, 0.225, 1e-3);
  EXPECT_NEAR(red.b, 0.126, 1e-3);
}

TEST(Oklab, GoingThereAndBackKeepsTheColour) {
  for (const QColor& colour : {QColor(0x8D, 0xB8, 0x70), QColor(0x12, 0x34, 0x56), QColor(Qt::red)})
    EXPECT_EQ(fromOklab(toOklab(colour)).name(), colour.name());
}

double rise(int hour) {
  return toOklab(sunColour(hour)).lightness - toOklab(sunColour(hour - 1)).lightness;
}

// 8-bit channels round by half of what is allowed.
TEST(SunScale, LightnessRisesEvenlyUpToTheBendAndAfterIt) {
  for (int hour = 1; hour <= 8; ++hour) EXPECT_NEAR(rise(hour), rise(5), 0.01) << hour << " h";
  for (int hour = 9; hour <= 14; ++hour) EXPECT_NEAR(rise(hour), rise(11), 0.01) << hour << " h";
  EXPECT_GT(rise(11), 0.015);
  EXPECT_GT(rise(5), rise(11) * 1.5);
}

TEST(SunScale, RunsFromBlueVioletThroughGreyToStraw) {
  const Oklab none = toOklab(sunColour(0)), middle = toOklab(sunColour(kSunScaleBend * 2.0 / 3.0)),
              full = toOklab(sunColour(kSunScaleTop));
  EXPECT_LT(none.b, -0.08);
  EXPECT_GT(none.a, 0.0);
  EXPECT_LT(std::hypot(middle.a, middle.b), 0.02);
  EXPECT_GT(full.b, 0.08);
}

// Red-green blind eyes keep OKLab's lightness and its blue-yellow axis; steps there stay apart.
TEST(SunScale, WholeHoursStayApartWithoutRedAndGreen) {
  for (int hour = 1; hour <= 14; ++hour) {
    const Oklab p = toOklab(sunColour(hour - 1)), q = toOklab(sunColour(hour));
    EXPECT_GT(std::hypot(q.lightness - p.lightness, q.b - p.b), hour <= 8 ? 0.05 : 0.02)
        << hour << " h";
  }
}

TEST(SunScale, MoreThanTheTopLooksLikeIt) {
  EXPECT_EQ(sunColour(20), sunColour(kSunScaleTop));
  EXPECT_EQ(sunColour(-1), sunColour(0));
  EXPECT_EQ(sunRamp().size(), 141);
  EXPECT_EQ(sunRamp().last(), sunColour(kSunScaleTop).rgb());
}

}  // namespace
}  // namespace tussock
