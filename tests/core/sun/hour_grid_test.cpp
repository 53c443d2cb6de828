// SPDX-License-Identifier: MIT
// Checked against maps whose figures are put in by hand.
#include "core/sun/hour_grid.h"

#include <cmath>

#include <gtest/gtest.h>

namespace tussock {
namespace {

// A little more ground than was asked for.
constexpr Box kGround{{1, 2}, {2, 3}};

SunMap threeByThree(std::vector<std::chrono::month> months = {}) {
  return {kGround, Length::metres(0.4), 3, 3, std::move(months)};
}

TEST(HourGridTest, TakesTheWholeDayAndLeavesOutBuildingsAndUnaskedGround) {
  SunMap map(kGround, Length::metres(0.4), 3, AskedCells({{{0, 3}}, {{0, 3}}, {{0, 1}, {2, 3}}}));
  map.set(2, 1, {3.5, 1.25});
  map.setUnderBuilding(0, 0);
  const HourGrid grid = hourGridOf(map);
  EXPECT_FLOAT_EQ(grid.at(2, 1), 4.75f);
  EXPECT_TRUE(std::isnan(grid.at(0, 0)));
  EXPECT_TRUE(std::isnan(grid.at(1, 2)));
  EXPECT_NEAR(grid.area.high.x, 2.2, 1e-12);
  EXPECT_EQ(grid.centreOf(2, 1), map.centreOf(2, 1));
  EXPECT_TRUE(hourGridOf(SunMap()).empty());
}

TEST(HourGridTest, TellsAMonthAndTheWorstOfEachSpot) {
  SunMap map = threeByThree({std::chrono::May, std::chrono::June});
  map.setMonth(0, 1, 1, {2.0, 3.0});
  map.setMonth(1, 1, 1, {4.0, 4.0});
  map.setMonth(0, 2, 2, {6.0, 1.0});
  map.setMonth(1, 2, 2, {0.5, 1.0});
  EXPECT_FLOAT_EQ(hourGridOf(map, std::chrono::May).at(1, 1), 5.0f);
  EXPECT_FLOAT_EQ(hourGridOf(map, std::chrono::June).at(1, 1), 8.0f);
  EXPECT_FLOAT_EQ(worstHourGridOf(map).at(1, 1), 5.0f);
  EXPECT_FLOAT_EQ(worstHourGridOf(map).at(2, 2), 1.5f);
}

TEST(HourGridTest, HasNothingOfMonthsThatTheMapDoesNotTell) {
  EXPECT_TRUE(hourGridOf(threeByThree({std::chrono::May}), std::chrono::January).empty());
  EXPECT_TRUE(worstHourGridOf(threeByThree()).empty());
}

TEST(HourGridTest, TakesOneCellOutOfSeveralOfWideGround) {
  SunMap map({{0, 0}, {2000, 1000}}, Length::metres(1), 2000, 1000);
  for (int row = 0; row < map.rows(); ++row)
    for (int column = 0; column < map.columns(); ++column)
      map.set(column, row, {column < 900 ? 2.0 : 8.0, 0.0});
  const HourGrid grid = hourGridOf(map);
  EXPECT_EQ(grid.columns, 1000);
  EXPECT_EQ(grid.rows, 500);
  EXPECT_EQ(grid.at(445, 250), 2.0f) << "at 890 m east";
  EXPECT_EQ(grid.at(455, 250), 8.0f) << "at 910 m";
  EXPECT_EQ(grid.at(999, 499), 8.0f);
  EXPECT_NEAR(grid.area.high.x, 2000.0, 1e-9);
}

TEST(HourGridTest, ReadsTheCellUnderAPoint) {
  SunMap map = threeByThree();
  map.set(2, 0, {1.0, 1.5});
  map.setUnderBuilding(1, 1);
  const HourGrid grid = hourGridOf(map);
  EXPECT_EQ(grid.hoursAt({1.81, 2.39}), 2.5);
  EXPECT_EQ(grid.hoursAt({1.79, 2.39}), 0.0);
  EXPECT_FALSE(grid.hoursAt({1.5, 2.5})) << "under the building";
  EXPECT_FALSE(grid.hoursAt({0.99, 2.1}));
  EXPECT_FALSE(grid.hoursAt({1.5, 3.21}));
  EXPECT_FALSE(HourGrid().hoursAt({0, 0}));
}

}  // namespace
}  // namespace tussock
