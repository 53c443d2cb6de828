// SPDX-License-Identifier: MIT
// Nothing grows in paving, trunks, buildings, walls or stepping places; plain sense.
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

// Plants at x = 1 and x = 3, y = 5, among obstacles of the caller's.
YardBuilder twoPlants() {
  return YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, {{1.0, 5.0}, {3.0, 5.0}});
}

TEST(Obstructed, CleanYardHasNone) {
  EXPECT_TRUE(found(CheckId::Obstructed, twoPlants()).empty());
}

// A walk whose edge runs at y = 5 + `beyond`; the plants stand at y = 5.
std::vector<Finding> besideWalk(double beyond) {
  const std::string edge = std::to_string(5.0 + beyond);
  return found(CheckId::Obstructed, twoPlants().paving("Walk", "POLYGON((0 0, 10 0, 10 " + edge +
                                                                   ", 0 " + edge + ", 0 0))"));
}

TEST(Obstructed, ExactlyAtTheEdgeOfPavingPasses) {
  EXPECT_TRUE(besideWalk(0.0).empty());
}

TEST(Obstructed, JustOutsidePavingPasses) {
  EXPECT_TRUE(besideWalk(-0.01).empty());
}

TEST(Obstructed, JustInsidePavingIsAnAlert) {
  const auto findings = besideWalk(0.01);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Alert);
  EXPECT_NEAR(findings[0].measured, -0.01, 1e-9);
  EXPECT_EQ(findings[0].plants.size(), 2U);
}

TEST(Obstructed, OneFindingForADriftAndAnObstacle) {
  const auto findings = found(CheckId::Obstructed,
                              twoPlants()
                                  .building("Shed", "POLYGON((0.5 4, 1.5 4, 1.5 6, 0.5 6, 0.5 4))")
                                  .wall("Old wall", {{3.0, 0.0}, {3.0, 10.0}}, 0.2));
  ASSERT_EQ(findings.size(), 2U);
  EXPECT_EQ(findings[0].plants.size(), 1U);
  EXPECT_EQ(findings[1].plants.size(), 1U);
}

TEST(Obstructed, ATrunkTakesItsOwnWidthOnly) {
  EXPECT_EQ(found(CheckId::Obstructed, twoPlants().tree("Oak", {1.1, 5.0}, 0.3)).size(), 1U);
  EXPECT_TRUE(found(CheckId::Obstructed, twoPlants().tree("Oak", {1.1, 5.0}, 0.2)).empty());
}

TEST(Obstructed, ASteppingPlaceIsKeptFree) {
  EXPECT_EQ(found(CheckId::Obstructed, twoPlants().step({3.1, 5.0}, 0.2)).size(), 1U);
  EXPECT_TRUE(found(CheckId::Obstructed, twoPlants().step({3.2, 5.0}, 0.2)).empty());
}

TEST(Obstructed, AYardMayAskForClearance) {
  const auto yard = twoPlants().step({3.3, 5.0}, 0.2).threshold("obstacle_clearance", 0.15);
  const auto findings = found(CheckId::Obstructed, yard);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 0.1, 1e-9);
}

}  // namespace
}  // namespace tussock
