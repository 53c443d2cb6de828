// SPDX-License-Identifier: MIT
// Tall plants stand at the back, short ones in front (Ask Extension 351222, Minnesota, 2016); in
// an island bed the tallest stand in the centre; willowy, see-through plants may stand in front
// (Horticulture, Placing plants by height). The share hidden follows from similar triangles with
// eyes 1.6 m up and 1.5 m outside the edge.
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

// The bed is seen from the south. Its edge is at y = 0 and the eyes at y = -1.5. The rear plant
// stands at y = 3, the front one `gap` before it.
YardBuilder frontAndRear(const char* front, const char* rear, double gap, double aside = 0.0) {
  return YardBuilder()
      .bed("Walk", kSquareBed)
      .viewing("S")
      .drift(front, {{5.0 + aside, 3.0 - gap}})
      .drift(rear, {{5.0, 3.0}});
}

TEST(HeightOrder, LowBeforeTallPasses) {
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kConeflower, kJoePye, 0.5)).empty());
}

TEST(HeightOrder, EqualHeightsPass) {
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kAster, kAster, 0.5)).empty());
}

// Bergamot (1.0 m) at y = 2.5, 4.0 m from the eyes; coneflower (0.6 m) 4.5 m from them. The line
// over the top: 1.6 - 0.6 x 4.5 / 4.0 = 0.925 m, all of the coneflower.
TEST(HeightOrder, TallCloseBeforeLowHidesItWhole) {
  const auto yard = frontAndRear(kBergamot, kConeflower, 0.5);
  const auto findings = found(CheckId::HeightOrder, yard);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 1.0, 1e-9);
  EXPECT_EQ(findings[0].about, "S");
  EXPECT_EQ(findings[0].subjects.front(), refTo(yard.lastDrift()));
}

// The line over the bergamot's top falls to half the coneflower's height, 0.3 m, where
// 0.6 x 4.5 / d = 1.3, so d = 2.076923 m from the eyes and 2.423077 m before the coneflower.
constexpr double kGapForHalf = 4.5 - 2.7 / 1.3;

TEST(HeightOrder, ExactlyHalfHiddenPasses) {
  EXPECT_TRUE(
      found(CheckId::HeightOrder, frontAndRear(kBergamot, kConeflower, kGapForHalf)).empty());
}

TEST(HeightOrder, JustLessThanHalfHiddenPasses) {
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kBergamot, kConeflower, kGapForHalf + 0.01))
                  .empty());
}

TEST(HeightOrder, JustMoreThanHalfHiddenIsFound) {
  const auto findings =
      found(CheckId::HeightOrder, frontAndRear(kBergamot, kConeflower, kGapForHalf - 0.01));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_GT(findings[0].measured, 0.5);
  EXPECT_LT(findings[0].measured, 0.53);
}

TEST(HeightOrder, FarBehindAStepAsideShowsIt) {
  auto deep = [](double gap) {
    return found(CheckId::HeightOrder, YardBuilder()
                                           .bed("Walk", kSquareBed)
                                           .viewing("S")
                                           .drift(kJoePye, {{5.0, 1.0}})
                                           .drift(kConeflower, {{5.0, 1.0 + gap}}));
  };
  EXPECT_EQ(deep(2.99).size(), 1U);
  EXPECT_TRUE(deep(3.01).empty());
}

TEST(HeightOrder, BesideIsNotInFront) {  // the bergamot reaches 0.25 m to each side
  EXPECT_EQ(found(CheckId::HeightOrder, frontAndRear(kBergamot, kConeflower, 0.5, 0.24)).size(),
            1U);
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kBergamot, kConeflower, 0.5, 0.26)).empty());
}

TEST(HeightOrder, BehindHidesNothing) {
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kBergamot, kConeflower, -0.5)).empty());
}

TEST(HeightOrder, SeeThroughPlantsAreExcused) {
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kBlazingStar, kConeflower, 0.5)).empty());
  EXPECT_TRUE(found(CheckId::HeightOrder, frontAndRear(kBluestem, kAlexanders, 0.5)).empty());
}

TEST(HeightOrder, NothingIsAskedWhereNobodyLooks) {
  EXPECT_TRUE(found(CheckId::HeightOrder, YardBuilder()
                                              .bed("Walk", kSquareBed)
                                              .drift(kBergamot, {{5.0, 2.5}})
                                              .drift(kConeflower, {{5.0, 3.0}}))
                  .empty());
}

TEST(HeightOrder, OnlyTheMainLayerIsLookedAt) {
  auto yard = frontAndRear(kBergamot, kConeflower, 0.5);
  EXPECT_TRUE(found(CheckId::HeightOrder, yard.layer(Layer::Ground)).empty());
}

TEST(HeightOrder, ADriftIsJudgedByAllItsPlants) {
  const auto findings =
      found(CheckId::HeightOrder, YardBuilder()
                                      .bed("Walk", kSquareBed)
                                      .viewing("S")
                                      .drift(kBergamot, row(2, 1.0, {4.0, 2.5}))
                                      .drift(kConeflower, row(3, 1.0, {4.0, 3.0})));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 2.0 / 3.0, 1e-9);
}

TEST(HeightOrder, EachSideIsLookedFrom) {
  auto yard = YardBuilder()
                  .bed("Walk", kSquareBed)
                  .viewing("S;N")
                  .drift(kBergamot, {{5.0, 4.5}})
                  .drift(kConeflower, {{5.0, 5.0}})
                  .drift(kBergamot, {{5.0, 5.5}});
  EXPECT_EQ(found(CheckId::HeightOrder, yard).size(), 2U);
}

// The bed reaches from y = 0 to y = 10.
YardBuilder tallBetweenLow(const char* sides) {
  return YardBuilder()
      .bed("Walk", kSquareBed)
      .viewing(sides)
      .drift(kConeflower, {{5.0, 4.0}})
      .drift(kJoePye, {{5.0, 5.0}})
      .drift(kConeflower, {{5.0, 6.0}});
}

TEST(HeightOrder, BetweenOppositeSidesABedRisesToItsMiddle) {
  EXPECT_EQ(found(CheckId::HeightOrder, tallBetweenLow("S")).size(), 1U);
  EXPECT_EQ(found(CheckId::HeightOrder, tallBetweenLow("N")).size(), 1U);
  EXPECT_EQ(found(CheckId::HeightOrder, tallBetweenLow("S;W")).size(), 1U);
  for (const char* sides : {"N;S", "N;E;S;W", "NW;SE;S;N"})
    EXPECT_TRUE(found(CheckId::HeightOrder, tallBetweenLow(sides)).empty()) << sides;
}

TEST(HeightOrder, BetweenOppositeSidesEachPlantIsSeenFromTheNearer) {
  const auto yard = YardBuilder()
                        .bed("Walk", kSquareBed)
                        .viewing("N;S")
                        .drift(kBergamot, {{5.0, 2.0}})
                        .drift(kConeflower, {{5.0, 2.5}})
                        .drift(kBergamot, {{5.0, 3.0}});
  const auto findings = found(CheckId::HeightOrder, yard);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].about, "S");
}

TEST(HeightOrder, AnIslandRisesToItsMiddle) {
  EXPECT_TRUE(found(CheckId::HeightOrder, YardBuilder()
                                              .bed("Island", kSquareBed)
                                              .viewing("all")
                                              .drift(kJoePye, {{5.0, 5.0}})
                                              .drift(kConeflower, {{5.0, 1.0}, {5.0, 9.0}}))
                  .empty());
  const auto findings = found(CheckId::HeightOrder, YardBuilder()
                                                        .bed("Island", kSquareBed)
                                                        .viewing("all")
                                                        .drift(kJoePye, {{1.0, 4.8}})
                                                        .drift(kConeflower, {{1.6, 4.8}}));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].about, "all");
}

}  // namespace
}  // namespace tussock
