// SPDX-License-Identifier: MIT
// A drift is read as one where its plants hang together (common practice): gaps under 1.3 spacings,
// as the rules of placing have it.
#include <cmath>

#include <gtest/gtest.h>

#include "core/checks/moved_plant.h"
#include "core/planting/edit_drift.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

const Catalogue kNoFacts;

YardBuilder driftAt(std::vector<Point> places) {
  return YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, std::move(places)).spaced(0.4);
}

TEST(Pieces, GapsUnderOnePointThreeSpacingsHoldADriftTogether) {
  EXPECT_TRUE(found(CheckId::Pieces, driftAt({{1, 5}, {1.4, 5}, {1.4 + 0.519, 5}})).empty());
  const auto apart = found(CheckId::Pieces, driftAt({{1, 5}, {1.4, 5}, {1.4 + 0.521, 5}}));
  ASSERT_EQ(apart.size(), 1u);
  EXPECT_EQ(apart[0].severity, Severity::Hint);
  EXPECT_EQ(apart[0].measured, 1.0);
  ASSERT_EQ(apart[0].plants.size(), 1u);
  EXPECT_EQ(apart[0].place.size(), 1u);
}

TEST(Pieces, TheFewerOfTwoPiecesStandApart) {
  const auto apart =
      found(CheckId::Pieces, driftAt({{1, 5}, {1.4, 5}, {3, 5}, {3.4, 5}, {3.8, 5}}));
  ASSERT_EQ(apart.size(), 1u);
  EXPECT_EQ(apart[0].measured, 2.0);
}

TEST(Pieces, AreNotAskedOfSinglePlantsAMatrixAndWhatStandsThere) {
  const std::vector<Point> places{{1, 5}, {3, 5}, {5, 5}};
  EXPECT_TRUE(found(CheckId::Pieces, driftAt(places).existing()).empty());
  for (const Pattern pattern : {Pattern::Single, Pattern::Matrix}) {
    YardBuilder builder = driftAt(places);
    Yard yard = builder.build();
    Drift drift = *yard.drifts.find(builder.lastDrift());
    drift.pattern = pattern;
    yard.drifts = yard.drifts.with(drift);
    EXPECT_TRUE(runCheck(CheckId::Pieces, {yard, kNoFacts}).empty());
  }
}

// 0.5 m on the plan is 0.527 m along ground that rises one in three, and a gap there.
TEST(Pieces, AreMeasuredOnTheGround) {
  YardBuilder builder = driftAt({{1, 5}, {1, 5.5}});
  Yard yard = builder.build();
  EXPECT_TRUE(runCheck(CheckId::Pieces, {yard, kNoFacts}).empty());
  yard.settings.slope = Angle::radians(std::atan(1.0 / 3.0));
  yard.settings.aspect = Angle::degrees(180);
  EXPECT_EQ(runCheck(CheckId::Pieces, {yard, kNoFacts}).size(), 1u);
}

TEST(Pieces, AreToldOfPlantsWhileTheyAreMoved) {
  const YardBuilder builder = driftAt({{1, 5}, {1.4, 5}, {1.8, 5}});
  const Yard yard = builder.build();
  const Id<Drift> id = builder.lastDrift();
  const auto& plants = yard.drifts.find(id)->plants;
  const CheckInput input{yard, kNoFacts};
  const auto told = findingsAt(surveyOf(input), id, plants[2].id, {4, 5});
  ASSERT_EQ(told.size(), 1u);
  EXPECT_EQ(told[0].check, CheckId::Pieces);
  EXPECT_EQ(told[0].plants, std::vector{plants[2].id});
  EXPECT_TRUE(findingsAt(surveyOf(input), id, plants[2].id, {1.8, 5.1}).empty());
  const Yard moved =
      apply(yard, movePlants(yard, id, {plants[1].id, plants[2].id}, {2.0, 0.0}).edit);
  const CheckInput after{moved, kNoFacts};
  const auto left = findingsAt(surveyOf(after), id, {plants[1].id, plants[2].id});
  ASSERT_EQ(left.size(), 1u);
  EXPECT_EQ(left[0].plants, std::vector{plants[0].id}) << "the one that was left behind";
}

}  // namespace
}  // namespace tussock
