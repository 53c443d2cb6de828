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

TEST(SunScale, LightnessRisesEvenlyWithTheHours) {
  const double step = toOklab(sunColour(5)).lightness - toOklab(sunColour(4)).lightness;
  for (int hour = 1; hour <= 10; ++hour) {
    const double rise = toOklab(sunColour(hour)).lightness - toOklab(sunColour(hour - 1)).lightness;
    EXPECT_GT(rise, 0.0);
    EXPECT_NEAR(rise, step, 0.01) << hour << " h";  // 8-bit channels round by half of that
  }
}

TEST(SunScale, RunsFromBlueVioletThroughGreyToStraw) {
  const Oklab none = toOklab(sunColour(0)), middle = toOklab(sunColour(5)),
              full = toOklab(sunColour(10));
  EXPECT_LT(none.b, -0.08);
  EXPECT_GT(none.a, 0.0);
  EXPECT_LT(std::hypot(middle.a, middle.b), 0.02);
  EXPECT_GT(full.b, 0.08);
}

// Red-green blind eyes keep OKLab's lightness and its blue-yellow axis; steps there stay apart.
TEST(SunScale, WholeHoursStayApartWithoutRedAndGreen) {
  for (int hour = 1; hour <= 10; ++hour) {
    const Oklab p = toOklab(sunColour(hour - 1)), q = toOklab(sunColour(hour));
    EXPECT_GT(std::hypot(q.lightness - p.lightness, q.b - p.b), 0.05) << hour << " h";
  }
}

TEST(SunScale, MoreThanTenHoursLooksLikeTen) {
  EXPECT_EQ(sunColour(14), sunColour(10));
  EXPECT_EQ(sunColour(-1), sunColour(0));
  EXPECT_EQ(sunRamp().size(), 101);
  EXPECT_EQ(sunRamp().last(), sunColour(10).rgb());
}

}  // namespace
}  // namespace tussock
