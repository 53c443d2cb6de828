// SPDX-License-Identifier: MIT
#include "core/catalog/colour_pairs.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

// culori 4.0.2: blue lies at 264.05 degrees, so across from it at 84.05, which is not yellow, at
// 109.77: other spaces than OKLCH pair other colours.
TEST(ColourPairs, TheHueAcrossIsHalfATurnAway) {
  EXPECT_NEAR(complementOf(264.0520), 84.0520, 1e-9);
  EXPECT_NEAR(complementOf(20.0), 200.0, 1e-9);
  EXPECT_NEAR(hueDistance({0, 0, 255}, {255, 255, 0}), 264.0520 - 109.7692, 1e-3);
}

TEST(ColourPairs, MeasureTheShortWayRound) {
  const Rgb red{255, 0, 0}, blue{0, 0, 255};  // 29.23 and 264.05 degrees
  EXPECT_NEAR(hueDistance(red, blue), 360.0 - (264.0520 - 29.2339), 1e-3);
  EXPECT_EQ(hueDistance(red, red), 0.0);
}

TEST(ColourPairs, AreNamedByTheirDistance) {
  const Rgb blue{0, 0, 255}, yellow{255, 255, 0}, green{0, 255, 0}, red{255, 0, 0};
  EXPECT_EQ(relationOf(blue, yellow), ColourRelation::Complementary);  // 154 degrees
  EXPECT_EQ(relationOf(yellow, green), ColourRelation::Analogous);     // 33 degrees
  EXPECT_EQ(relationOf(red, green), ColourRelation::Apart);            // 113 degrees
  EXPECT_EQ(relationOf(red, {230, 10, 10}), ColourRelation::Alike);
  EXPECT_EQ(relationOf(red, {250, 248, 244}), ColourRelation::Neutral);
}

TEST(ColourPairs, DoNotDependOnTheOrder) {
  for (const Rgb a : {Rgb{255, 0, 0}, Rgb{126, 79, 163}, Rgb{250, 250, 250}})
    for (const Rgb b : {Rgb{0, 0, 255}, Rgb{237, 210, 46}})
      EXPECT_EQ(relationOf(a, b), relationOf(b, a));
}

}  // namespace
}  // namespace tussock
