// SPDX-License-Identifier: MIT
#include "core/model/viewing.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(Viewing, ReadsCompassPointsAndDegrees) {
  const auto v = parseViewing("S;SSW;210");
  ASSERT_TRUE(v.has_value());
  ASSERT_EQ(v->from.size(), 3u);
  EXPECT_NEAR(v->from[0].degrees(), 180.0, 1e-12);
  EXPECT_NEAR(v->from[1].degrees(), 202.5, 1e-12);
  EXPECT_NEAR(v->from[2].degrees(), 210.0, 1e-12);
  EXPECT_EQ(parseViewing(formatViewing(*v)), v);
}

TEST(Viewing, KnowsAllRoundAndNotKnown) {
  EXPECT_TRUE(parseViewing("all")->allRound);
  EXPECT_FALSE(parseViewing("")->known());
  EXPECT_EQ(formatViewing(*parseViewing("all")), "all");
}

TEST(Viewing, RefusesWhatIsNoDirection) {
  for (const char* text : {"up", "S;", "360", "-5", "S,E", "south"})
    EXPECT_FALSE(parseViewing(text).has_value()) << text;
}

TEST(Viewing, IsSaidInWords) {
  EXPECT_EQ(describeViewing(*parseViewing("S")), "the south");
  EXPECT_EQ(describeViewing(*parseViewing("S;E")), "the south and the east");
  EXPECT_EQ(describeViewing(*parseViewing("196")), "the south-south-west");
}

}  // namespace
}  // namespace tussock
