// SPDX-License-Identifier: MIT
// The factor 0.85 and the trowel's width of 0.12 m are common practice for loose staggered rows;
// odd groups so planted "usually work best visually" (Vernon, Irwine, Patton and Chapman, Rules of
// thumb: planting distances and densities).
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

// Two plants of spacings 0.4 and 0.6 are asked to stand 0.85 x 0.5 = 0.425 m apart.
std::vector<Finding> twoDrifts(double apart) {
  return found(CheckId::Spacing, YardBuilder()
                                     .bed("Walk", kSquareBed)
                                     .drift(kBluestem, {{5.0, 5.0}})
                                     .spaced(0.4)
                                     .drift(kBergamot, {{5.0, 5.0 + apart}})
                                     .spaced(0.6));
}

TEST(Spacing, CleanYardHasNone) {
  EXPECT_TRUE(twoDrifts(2.0).empty());
}

TEST(Spacing, ExactlyAtTheLeastPasses) {
  EXPECT_TRUE(twoDrifts(0.425).empty());
}

TEST(Spacing, JustOverPasses) {
  EXPECT_TRUE(twoDrifts(0.426).empty());
}

TEST(Spacing, WithinTheMillimetrePasses) {
  EXPECT_TRUE(twoDrifts(0.4241).empty());
}

TEST(Spacing, JustUnderIsFoundWithTheDistance) {
  const auto findings = twoDrifts(0.4235);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Caution);
  EXPECT_NEAR(findings[0].measured, 0.4235, 1e-9);
  EXPECT_NEAR(findings[0].required, 0.425, 1e-9);
  EXPECT_EQ(findings[0].subjects.size(), 2U);
  EXPECT_EQ(findings[0].plants.size(), 2U);
}

TEST(Spacing, LessThanHalfIsAnAlert) {
  EXPECT_EQ(twoDrifts(0.2).at(0).severity, Severity::Alert);
  EXPECT_EQ(twoDrifts(0.22).at(0).severity, Severity::Caution);
}

TEST(Spacing, OneFindingForAPairGivesTheWorst) {
  const auto findings = found(CheckId::Spacing, YardBuilder()
                                                    .bed("Walk", kSquareBed)
                                                    .drift(kBluestem, row(3, 1.0, {2.0, 5.0}))
                                                    .drift(kAster, {{2.0, 5.3}, {3.0, 5.25}}));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 0.25, 1e-9);
  EXPECT_EQ(findings[0].plants.size(), 4U);
}

TEST(Spacing, WithinOneDriftNamesItOnce) {
  const auto findings =
      found(CheckId::Spacing,
            YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, row(3, 0.3, {2.0, 5.0})));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].subjects.size(), 1U);
  EXPECT_EQ(findings[0].plants.size(), 3U);
}

std::vector<Finding> twoLayers(double apart) {
  return found(CheckId::Spacing, YardBuilder()
                                     .bed("Walk", kSquareBed)
                                     .drift(kBergamot, {{5.0, 5.0}})
                                     .spaced(0.6)
                                     .drift(kSedge, {{5.0 + apart, 5.0}})
                                     .layer(Layer::Ground));
}

TEST(Spacing, BetweenLayersATrowelsWidthIsEnough) {
  EXPECT_TRUE(twoLayers(0.12).empty());
  const auto findings = twoLayers(0.118);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].thresholdId, "between_layers");
  EXPECT_NEAR(findings[0].required, 0.12, 1e-12);
}

std::vector<Finding> acrossAnEdge(const char* second) {
  return found(CheckId::Spacing, YardBuilder()
                                     .bed("West", kSquareBed)
                                     .drift(kBluestem, {{9.9, 5.0}})
                                     .bed("East", second)
                                     .drift(kAster, {{10.1, 5.0}}));
}

TEST(Spacing, IsMeasuredAcrossBedsThatTouch) {
  const auto findings = acrossAnEdge("POLYGON((10 0, 20 0, 20 10, 10 10, 10 0))");
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 0.2, 1e-9);
}

TEST(Spacing, IsNotMeasuredAcrossAWalk) {
  EXPECT_TRUE(acrossAnEdge("POLYGON((10.05 0, 20 0, 20 10, 10.05 10, 10.05 0))").empty());
}

TEST(Spacing, WhatStandsThereAlreadyIsOnlyHinted) {
  const auto findings = found(
      CheckId::Spacing,
      YardBuilder().bed("Old", kSquareBed).drift(kBluestem, row(2, 0.1, {2.0, 5.0})).existing());
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Hint);
}

TEST(Spacing, AYardMaySetItsOwnFactor) {
  const auto strict = YardBuilder()
                          .threshold("spacing_factor", 1.0)
                          .bed("Walk", kSquareBed)
                          .drift(kBluestem, row(3, 0.39, {2.0, 5.0}));
  EXPECT_NEAR(found(CheckId::Spacing, strict).at(0).required, 0.4, 1e-12);
}

}  // namespace
}  // namespace tussock
