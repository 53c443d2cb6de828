// SPDX-License-Identifier: MIT
// Roofs seen from above. Where two slopes of one pitch meet over walls at right angles, hips and
// valleys run at 45 degrees on the plan (carpenters' roof framing, common practice).
#include "core/sun/roof_plan.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

const Polygon kEll{{{0, 0}, {12, 0}, {12, 4}, {6, 4}, {6, 10}, {0, 10}}, {}};

Building house(Polygon footprint, Roof roof) {
  Building building;
  building.footprint = std::move(footprint);
  building.roof = roof;
  building.eave = Length::metres(3);
  building.ridge = Length::metres(6);
  return building;
}

bool drawn(const RoofPlan& plan, Point p) {
  return std::ranges::any_of(plan.creases, [p](const auto& line) {
    return distanceToSegment(p, line[0], line[1]) < 1e-3;
  });
}

double lengthOf(const RoofPlan& plan) {
  double sum = 0.0;
  for (const auto& [a, b] : plan.creases) sum += distance(a, b);
  return sum;
}

TEST(RoofPlanOf, AHipRoofHasItsRidgeAndFourHips) {
  const RoofPlan plan = roofPlanOf(house({{{0, 0}, {10, 0}, {10, 6}, {0, 6}}, {}}, Roof::Hip));
  for (const Point p : {Point{5, 3}, {1, 1}, {9, 1}, {1, 5}, {9, 5}})
    EXPECT_TRUE(drawn(plan, p)) << p.x << ", " << p.y;
  EXPECT_NEAR(lengthOf(plan), 4.0 + 4.0 * 3.0 * std::sqrt(2.0), 1e-3);
  EXPECT_TRUE(plan.eaves.empty());
}

// The wide leg is 6 m wide with its ridge at x = 3, the narrow one 4 m with its own at y = 2, which
// ends where the wide roof is as high: at x = 4.
TEST(RoofPlanOf, AnEllWithGablesHasTwoRidgesAndTwoValleys) {
  const RoofPlan plan = roofPlanOf(house(kEll, Roof::Gable));
  for (const Point p : {Point{3, 0.5}, {3, 9.5}, {4.1, 2}, {11.5, 2}, {5, 3}, {5, 1}})
    EXPECT_TRUE(drawn(plan, p)) << p.x << ", " << p.y;
  EXPECT_FALSE(drawn(plan, {3.5, 2})) << "the narrow ridge goes under the wide roof";
  EXPECT_NEAR(lengthOf(plan), 10.0 + 8.0 + 2.0 * 2.0 * std::sqrt(2.0), 1e-3);
}

TEST(RoofPlanOf, AnEllWithHipsHasOneValley) {
  const RoofPlan plan = roofPlanOf(house(kEll, Roof::Hip));
  for (const Point p : {Point{3, 5}, {1, 1}, {1, 9}, {5, 9}, {5, 3}, {11, 1}, {11, 3}, {7, 2}})
    EXPECT_TRUE(drawn(plan, p)) << p.x << ", " << p.y;
  EXPECT_FALSE(drawn(plan, {5, 1})) << "both roofs fall to the south there, in one plane";
}

TEST(RoofPlanOf, EavesReachPastTheWalls) {
  Building building = house({{{0, 0}, {10, 0}, {10, 6}, {0, 6}}, {}}, Roof::Gable);
  building.overhang = Length::metres(0.5);
  const RoofPlan plan = roofPlanOf(building);
  ASSERT_EQ(plan.eaves.size(), 1u);
  EXPECT_NEAR(areaOf(plan.eaves[0]).squareMetres(), 11.0 * 7.0, 1e-6);
  EXPECT_TRUE(drawn(plan, {-0.4, 3})) << "the ridge runs out to them";
  building.roof = Roof::Flat;
  EXPECT_TRUE(roofPlanOf(building).creases.empty());
  EXPECT_EQ(roofPlanOf(building).eaves.size(), 1u);
}

TEST(RoofPlanOf, AnEllTurnedHasItsLinesTurned) {
  const Angle turn = Angle::degrees(27);
  const RoofPlan plan = roofPlanOf(house(rotated(kEll, turn, {0, 0}), Roof::Gable));
  for (const Point p : {Point{3, 0.5}, {5, 3}, {5, 1}, {11.5, 2}})
    EXPECT_TRUE(drawn(plan, rotated(p, turn))) << p.x << ", " << p.y;
}

}  // namespace
}  // namespace tussock
