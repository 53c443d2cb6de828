// SPDX-License-Identifier: MIT
// Checked against geometry: on hours that follow a known function of the place, the lines are
// known.
#include "core/sun/contours.h"

#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

#include <gtest/gtest.h>

namespace tussock {
namespace {

constexpr float kNoGround = std::numeric_limits<float>::quiet_NaN();

HourGrid gridOf(int columns, int rows, double cell, const std::function<double(Point)>& hours) {
  HourGrid grid{{{0, 0}, {columns * cell, rows * cell}}, cell, columns, rows, {}};
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column)
      grid.hours.push_back(static_cast<float>(hours(grid.centreOf(column, row))));
  return grid;
}

TEST(Contours, AnEvenSlopeHasAStraightLineThroughTheWholeGrid) {
  const HourGrid grid = gridOf(20, 10, 0.5, [](Point p) { return p.x; });
  const auto lines = contoursOf(grid, 4.1);
  ASSERT_EQ(lines.size(), 1u);
  EXPECT_FALSE(lines[0].closed);
  for (const Point p : lines[0].points) EXPECT_NEAR(p.x, 4.1, 1e-6);
  EXPECT_NEAR(lengthOf(lines[0]), 9 * 0.5, 1e-6);  // from the first row's centre to the last's
  EXPECT_NEAR(middleOf(lines[0]).y, 2.5, 1e-6);
}

// A cone: its level lines are circles of known length.
TEST(Contours, AConeHasACircleWithTheSunOnItsLeft) {
  const Point top{10, 10};
  const HourGrid grid = gridOf(80, 80, 0.25, [&](Point p) { return 9.0 - distance(p, top); });
  const auto lines = contoursOf(grid, 4.0);
  ASSERT_EQ(lines.size(), 1u);
  EXPECT_TRUE(lines[0].closed);
  for (const Point p : lines[0].points) EXPECT_NEAR(distance(p, top), 5.0, 0.01);
  EXPECT_NEAR(lengthOf(lines[0]), 10.0 * std::numbers::pi, 0.05);
  EXPECT_GT(signedArea(lines[0].points), 0.0) << "anticlockwise about the sunny middle";
}

TEST(Contours, AHollowHasTheSunOnTheOutside) {
  const HourGrid grid = gridOf(80, 80, 0.25, [](Point p) { return distance(p, {10, 10}); });
  const auto lines = contoursOf(grid, 4.0);
  ASSERT_EQ(lines.size(), 1u);
  EXPECT_LT(signedArea(lines[0].points), 0.0);
}

TEST(Contours, LinesEndAtABuilding) {
  HourGrid grid = gridOf(20, 9, 1.0, [](Point p) { return p.x; });
  for (int column = 0; column < grid.columns; ++column)
    grid.hours[static_cast<std::size_t>(4 * grid.columns + column)] = kNoGround;
  const auto lines = contoursOf(grid, 10.25);
  ASSERT_EQ(lines.size(), 2u);
  for (const ContourLine& line : lines) EXPECT_NEAR(lengthOf(line), 3.0, 1e-6);
}

// Two sunny cells that touch at a corner: the mean of the four says whether they are one.
TEST(Contours, WhereCellsMeetCrosswiseTheMeanDecides) {
  const auto crossed = [](double shade) {
    HourGrid grid = gridOf(4, 4, 1.0, [=](Point) { return shade; });
    grid.hours[5] = grid.hours[10] = 6.0f;
    return contoursOf(grid, 3.0);
  };
  EXPECT_EQ(crossed(0.5).size(), 1u) << "mean 3.25: joined";
  EXPECT_EQ(crossed(-1.0).size(), 2u) << "mean 2.5: apart";
}

TEST(Contours, NoneWhereTheHoursNeverReachTheLevel) {
  const HourGrid grid = gridOf(5, 5, 1.0, [](Point) { return 4.0; });
  EXPECT_TRUE(contoursOf(grid, 6.0).empty());
  EXPECT_TRUE(contoursOf(grid, 4.0).empty()) << "exactly at the level all round: all sunny";
  EXPECT_TRUE(contoursOf(HourGrid(), 6.0).empty());
}

}  // namespace
}  // namespace tussock
