// SPDX-License-Identifier: MIT
// Reference values: B. Ottosson (2020), OKLab, with his ok_color.h for red; culori 4.0.2 (npm) for
// the rest.
#include "core/catalog/oklab.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(Oklab, GivesTheReferenceValuesOfRed) {
  const Oklab red = oklabOf(Rgb{255, 0, 0});
  EXPECT_NEAR(red.lightness, 0.6279553606, 1e-8);
  EXPECT_NEAR(red.a, 0.2248630611, 1e-8);
  EXPECT_NEAR(red.b, 0.1258462985, 1e-8);
  EXPECT_NEAR(oklchOf(red).chroma, 0.2576833077, 1e-8);
  EXPECT_NEAR(oklchOf(red).hue, 29.2338851923, 1e-6);
}

struct Reference {
  Rgb colour;
  Oklch expected;
};

TEST(Oklab, GivesTheReferenceValuesOfTheOtherPrimaries) {
  for (const Reference& one : {Reference{{0, 255, 0}, {0.866440, 0.294827, 142.4953}},
                               Reference{{0, 0, 255}, {0.452014, 0.313214, 264.0520}},
                               Reference{{255, 255, 0}, {0.967983, 0.211006, 109.7692}}}) {
    const Oklch got = oklchOf(oklabOf(one.colour));
    EXPECT_NEAR(got.lightness, one.expected.lightness, 1e-5);
    EXPECT_NEAR(got.chroma, one.expected.chroma, 1e-5);
    EXPECT_NEAR(got.hue, one.expected.hue, 1e-3);
  }
}

TEST(Oklab, GoesThereAndBack) {
  for (int red = 0; red <= 255; red += 51)
    for (int green = 0; green <= 255; green += 51)
      for (int blue = 0; blue <= 255; blue += 51) {
        const Srgb back = srgbOf(oklabOf(oklchOf(oklabOf(Rgb{red, green, blue}))));
        EXPECT_NEAR(back.red * 255.0, red, 0.01);
        EXPECT_NEAR(back.green * 255.0, green, 0.01);
        EXPECT_NEAR(back.blue * 255.0, blue, 0.01);
      }
}

TEST(Oklab, OnlyWhatIsNearlyWhiteIsLostOnPaper) {
  EXPECT_TRUE(lostOnPaper({255, 255, 255}));
  EXPECT_TRUE(lostOnPaper({0xF4, 0xF1, 0xE4}));
  EXPECT_FALSE(lostOnPaper({255, 255, 0}));  // as light (above), but yellow
  EXPECT_FALSE(lostOnPaper({0xF2, 0xC8, 0xD8}));
  EXPECT_FALSE(lostOnPaper({0xC0, 0xC0, 0xC0}));
}

}  // namespace
}  // namespace tussock
