// SPDX-License-Identifier: MIT
#include "core/planting/plant_count.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(PlantCount, IsOddUnlessAsked) {
  EXPECT_EQ(countTaken(8, CountAs::Odd), 7);
  EXPECT_EQ(countTaken(8, CountAs::Asked), 8);
  for (const CountAs as : {CountAs::Odd, CountAs::Asked}) {
    EXPECT_EQ(countTaken(7, as), 7);
    EXPECT_EQ(countTaken(0, as), 1);
    EXPECT_EQ(countTaken(-3, as), 1);
  }
}

TEST(PlantCount, KeepsAllThatWereAskedForElseAnOddNumber) {
  const auto kept = [](std::size_t found, int asked) {
    std::vector<Point> places(found);
    keepCount(places, asked);
    return places.size();
  };
  EXPECT_EQ(kept(8, 8), 8U);
  EXPECT_EQ(kept(7, 8), 7U);
  EXPECT_EQ(kept(6, 8), 5U);
  EXPECT_EQ(kept(6, 7), 5U);
  EXPECT_EQ(kept(0, 8), 0U);
}

TEST(PlantCount, StepsThroughOddNumbers) {
  EXPECT_EQ(nextCount(0), 1);
  EXPECT_EQ(nextCount(1), 3);
  EXPECT_EQ(nextCount(7), 9);
  EXPECT_EQ(nextCount(8), 9);
  EXPECT_EQ(previousCount(9), 7);
  EXPECT_EQ(previousCount(8), 7);
  EXPECT_EQ(previousCount(1), 1);
}

}  // namespace
}  // namespace tussock
