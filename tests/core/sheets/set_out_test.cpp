// SPDX-License-Identifier: MIT
// Staking out by two tapes: two circles about fixed points meet at the plant, as surveyors'
// trilateration has it.
#include "core/sheets/set_out.h"

#include <cmath>
#include <numbers>
#include <optional>

#include <gtest/gtest.h>

#include "core/sheets/bed_sheets.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::YardBuilder;

// Where circles about a and b meet, on the left of a to b or on its right (analytic geometry).
std::optional<Point> meeting(Point a, double ra, Point b, double rb, double side) {
  const double d = distance(a, b);
  const double along = (d * d + ra * ra - rb * rb) / (2.0 * d);
  const double square = ra * ra - along * along;
  if (square < -1e-6) return std::nullopt;
  const Point step = (b - a) * (1.0 / d);
  const Point left{-step.y, step.x};
  return a + step * along + left * (side * std::sqrt(std::max(0.0, square)));
}

double offMeeting(const SetOut& work, const SetOutRow& row) {
  double least = 1e9;
  for (const double side : {-1.0, 1.0})
    if (const auto found =
            meeting(work.first.at, row.first.metres(), work.second.at, row.second.metres(), side))
      least = std::min(least, distance(*found, row.at));
  return least;
}

Baseline lineOf(const Box& bed) {
  return baselineFor(bed, bed, 24, UnitSystem::Metres);
}

SetOut setOutOf(const Yard& yard) {
  const Bed& bed = *yard.beds.begin();
  const Angle turn = turnFor(bed);
  return setOut(yard, bed, turn, lineOf(boundsOf(rotated(bed.outline, turn, {}))));
}

// A house north of a bed that is seen from the south; a drift of one on each place.
YardBuilder houseAndBed(const std::vector<Point>& places) {
  YardBuilder yard;
  yard.bed("Front", "POLYGON((0 0,10 0,10 4,0 4,0 0))").viewing("S");
  for (const Point place : places) yard.drift("Monarda fistulosa", {place});
  yard.building("House", "POLYGON((-2 8,12 8,12 16,-2 16,-2 8))");
  return yard;
}

TEST(SetOut, HoldsTapesAtTheCornersThatSeeEveryDrift) {
  const SetOut work = setOutOf(houseAndBed({{2, 2}, {8, 1}}).build());
  EXPECT_EQ(work.first.name, "House, south-west corner");
  EXPECT_EQ(work.second.name, "House, south-east corner");
  ASSERT_EQ(work.rows.size(), 2u);
  EXPECT_NEAR(work.rows[0].first.metres(), std::hypot(4.0, 6.0), 1e-9);
  EXPECT_NEAR(work.rows[0].second.metres(), std::hypot(10.0, 6.0), 1e-9);
  EXPECT_FALSE(work.rows[0].weak());
}

TEST(SetOut, TwoTapesLeadBackToThePlant) {
  for (const Yard& yard : {houseAndBed({{2, 2}, {8, 1}, {5, 3.5}, {0.3, 0.3}}).build(),
                           YardBuilder()
                               .bed("Bare", "POLYGON((3 1,9 4,7 8,1 5,3 1))")
                               .drift("Monarda fistulosa", test::row(5, 0.5, {4, 3}))
                               .drift("Monarda fistulosa", test::row(3, 0.5, {5, 6}))
                               .build()}) {
    const SetOut work = setOutOf(yard);
    ASSERT_FALSE(work.rows.empty());
    for (const SetOutRow& row : work.rows) EXPECT_LT(offMeeting(work, row), 1e-6) << row.plants;
  }
}

TEST(SetOut, AlongAndOutLeadBackToThePlant) {
  const Yard yard = houseAndBed({{2, 2}, {8, 1}}).build();
  const Bed& bed = *yard.beds.begin();
  const Angle turn = turnFor(bed);
  const Baseline line = lineOf(boundsOf(rotated(bed.outline, turn, {})));
  for (const SetOutRow& row : setOut(yard, bed, turn, line).rows) {
    const Point turned = line.a + Point{row.along.metres(), row.out.metres()};
    EXPECT_LT(distance(rotated(turned, -turn), row.at), 1e-9);
  }
}

TEST(SetOut, GoesFromLeftToRight) {
  const SetOut work = setOutOf(houseAndBed({{8, 1}, {2, 2}, {5, 3}}).build());
  ASSERT_EQ(work.rows.size(), 3u);
  EXPECT_LT(work.rows[0].along, work.rows[1].along);
  EXPECT_LT(work.rows[1].along, work.rows[2].along);
}

// Error of a crossing over that of a tape is √2 / sin of the angle (geometry): 1.4 at 90°, 2.8 at
// 30°. Limit: common practice.
TEST(SetOut, ACrossingIsWeakBelowThirtyDegrees) {
  const auto weakAt = [](double degrees) {
    const double half = degrees / 2.0 * std::numbers::pi / 180.0;
    SetOutRow row;
    row.crossingDegrees = crossingDegrees({0, 0}, {-std::sin(half), std::cos(half)},
                                          {std::sin(half), std::cos(half)});
    EXPECT_NEAR(row.crossingDegrees, degrees, 1e-9);
    return row.weak();
  };
  EXPECT_TRUE(weakAt(29.99));
  EXPECT_FALSE(weakAt(30.0 + 1e-9));
  EXPECT_FALSE(weakAt(30.01));
  EXPECT_NEAR(std::numbers::sqrt2 / std::sin(30.0 * std::numbers::pi / 180.0), 2.8, 0.05);
}

// Tapes that come from opposite sides slide past one another as much as from the same one.
TEST(SetOut, ACrossingIsMeasuredBetweenTheLines) {
  EXPECT_NEAR(crossingDegrees({0, 0}, {-5, 0.5}, {5, 0.5}),
              2.0 * std::atan2(0.5, 5.0) * 180.0 / std::numbers::pi, 1e-9);
  EXPECT_NEAR(crossingDegrees({0, 0}, {0, 3}, {4, 0}), 90.0, 1e-9);
}

TEST(SetOut, ATapeDoesNotGoThroughABuilding) {
  YardBuilder yard = houseAndBed({{2, 2}, {8, 2}});
  yard.building("Shed", "POLYGON((-1 5,2 5,2 7,-1 7,-1 5))");  // before the house's west corner
  const SetOut work = setOutOf(yard.build());
  EXPECT_NE(work.first.name, "House, south-west corner");
  EXPECT_NE(work.second.name, "House, south-west corner");
  for (const SetOutRow& row : work.rows) EXPECT_LT(offMeeting(work, row), 1e-6);
}

TEST(SetOut, ATapeDoesNotGoThroughAThinFence) {
  YardBuilder yard = houseAndBed({{2, 2}, {8, 2}});
  yard.wall("Fence", {{-6, 6}, {16, 6}}, 0.02);
  const SetOut work = setOutOf(yard.build());
  EXPECT_EQ(work.first.name, "Fence, west end");
  EXPECT_EQ(work.second.name, "Fence, east end");
}

TEST(SetOut, ATapeMayRunAlongAFace) {
  const Yard yard = houseAndBed({}).build();
  const TapeObstacles obstacles(yard);
  EXPECT_TRUE(obstacles.free({"corner", {-2, 8}}, {12, 8}));
  EXPECT_FALSE(obstacles.free({"corner", {-2, 8}}, {12, 8.5}));
}

TEST(SetOut, ATrunkStopsATape) {
  const Yard yard = houseAndBed({}).tree("Oak", {5, 6}, 0.4).build();
  const TapeObstacles obstacles(yard);
  EXPECT_FALSE(obstacles.free({"corner", {5, 8}}, {5, 2}));
  EXPECT_TRUE(obstacles.free({"corner", {5.3, 8}}, {5.3, 2}));
}

TEST(SetOut, TapesAreNoLongerThanATape) {
  YardBuilder yard;
  yard.bed("Far", "POLYGON((0 0,10 0,10 4,0 4,0 0))").drift("Monarda fistulosa", {{5, 2}});
  yard.building("House", "POLYGON((-2 40,12 40,12 48,-2 48,-2 40))");
  const SetOut work = setOutOf(yard.build());
  EXPECT_EQ(work.first.name, "A");
  EXPECT_EQ(work.second.name, "B");
  EXPECT_FALSE(work.baseline);
}

TEST(SetOut, WithoutFixedPointsTapesAreHeldAtTheBaseline) {
  const SetOut work = setOutOf(YardBuilder()
                                   .bed("Bare", "POLYGON((0 0,10 0,10 4,0 4,0 0))")
                                   .drift("Monarda fistulosa", {{5, 2}})
                                   .build());
  EXPECT_EQ(work.first.name, "A");
  EXPECT_EQ(work.second.name, "B");
  ASSERT_EQ(work.rows.size(), 1u);
  EXPECT_NEAR(work.rows[0].first.metres(),
              std::hypot(work.rows[0].along.metres(), work.rows[0].out.metres()), 1e-9);
  EXPECT_FALSE(work.baseline);
}

// From the corners of the house (-2, 8) and (12, 8) to the ends of the baseline.
TEST(SetOut, TheBaselineIsFoundFromTheHouse) {
  const Yard yard = houseAndBed({{2, 2}}).build();
  const SetOut work = setOutOf(yard);
  ASSERT_TRUE(work.baseline);
  EXPECT_EQ(work.baseline->first.name, "House, south-west corner");
  const Baseline line = lineOf({{0, 0}, {10, 4}});
  EXPECT_NEAR(work.baseline->firstToA.metres(), distance({-2, 8}, line.a), 1e-9);
  EXPECT_NEAR(work.baseline->secondToA.metres(), distance({12, 8}, line.a), 1e-9);
  EXPECT_NEAR(work.baseline->firstToB.metres(), distance({-2, 8}, line.b), 1e-9);
  EXPECT_NEAR(work.baseline->secondToB.metres(), distance({12, 8}, line.b), 1e-9);
}

// The line goes round plants outside the bed, and is told from the bed, which can be seen.
TEST(SetOut, TheBaselineIsToldFromTheBedItself) {
  EXPECT_EQ(
      lineOf({{0, 0}, {10, 4}}).text(),
      "Baseline A–B: 10.20 m long, 10 cm outside the front; A is 10 cm outside the left end.");
  const Baseline wide = baselineFor({{-3, -2}, {10, 4}}, {{0, 0}, {10, 4}}, 24, UnitSystem::Metres);
  EXPECT_EQ(
      wide.text(),
      "Baseline A–B: 13.20 m long, 2.10 m outside the front; A is 3.10 m outside the left end.");
}

TEST(SetOut, WhatStandsThereIsNotStakedOut) {
  YardBuilder yard = houseAndBed({{2, 2}});
  yard.drift("Monarda fistulosa", {{8, 2}}).existing();
  EXPECT_EQ(setOutOf(yard.build()).rows.size(), 1u);
}

TEST(FixedPoints, CornersOfALongHouseHaveADirectionEach) {
  const auto points =
      fixedPoints(YardBuilder().building("Barn", "POLYGON((0 0,40 0,40 4,0 4,0 0))").build());
  ASSERT_EQ(points.size(), 4u);
  for (const FixedPoint& point : points) {
    const std::string north = point.at.y > 2 ? "north" : "south";
    const std::string east = point.at.x > 20 ? "east" : "west";
    EXPECT_EQ(point.name, "Barn, " + north + "-" + east + " corner");
  }
}

TEST(FixedPoints, ThoseOfOneNameAreLeftOut) {
  const auto points = fixedPoints(YardBuilder()
                                      .building("", "POLYGON((0 0,4 0,4 4,0 4,0 0))")
                                      .building("", "POLYGON((9 0,13 0,13 4,9 4,9 0))")
                                      .wall("Wall", {{0, 9}, {8, 9}}, 0.2)
                                      .build());
  ASSERT_EQ(points.size(), 2u);
  EXPECT_EQ(points[0].name, "Wall, west end");
  EXPECT_EQ(points[1].name, "Wall, east end");
}

}  // namespace
}  // namespace tussock
