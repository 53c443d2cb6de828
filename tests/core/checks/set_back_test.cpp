// SPDX-License-Identifier: MIT
// Half the spacing on centre from the edge: common practice.
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

// Spacing 0.4 m, so 0.2 m are asked.
std::vector<Finding> fromEdge(double metres) {
  return found(CheckId::SetBack,
               YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, {{metres, 5.0}, {5.0, 5.0}}));
}

TEST(SetBack, CleanYardHasNone) {
  EXPECT_TRUE(fromEdge(1.0).empty());
}

TEST(SetBack, ExactlyAtHalfTheSpacingPasses) {
  EXPECT_TRUE(fromEdge(0.2).empty());
}

TEST(SetBack, JustOverPasses) {
  EXPECT_TRUE(fromEdge(0.201).empty());
}

TEST(SetBack, JustUnderIsFound) {
  const auto findings = fromEdge(0.198);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Caution);
  EXPECT_NEAR(findings[0].measured, 0.198, 1e-9);
  EXPECT_NEAR(findings[0].required, 0.2, 1e-12);
  EXPECT_EQ(findings[0].plants.size(), 1U);
}

TEST(SetBack, OutsideIsAnAlertMeasuredBeyondTheEdge) {
  const auto findings = fromEdge(-0.5);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Alert);
  EXPECT_NEAR(findings[0].measured, -0.5, 1e-9);
}

TEST(SetBack, InAHoleOfTheBedIsOutside) {
  const auto findings =
      found(CheckId::SetBack,
            YardBuilder()
                .bed("Ring", "POLYGON((0 0, 10 0, 10 10, 0 10, 0 0), (4 4, 4 6, 6 6, 6 4, 4 4))")
                .drift(kBluestem, {{5.0, 4.5}}));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, -0.5, 1e-9);
}

TEST(SetBack, TheBedsOwnSetBackCountsWhereItIsMore) {
  auto yard = YardBuilder()
                  .bed("Walk", kSquareBed)
                  .setback(Length::metres(0.3))
                  .drift(kBluestem, {{0.25, 5.0}});
  EXPECT_NEAR(found(CheckId::SetBack, yard).at(0).required, 0.3, 1e-12);
  yard.spaced(0.8);
  EXPECT_NEAR(found(CheckId::SetBack, yard).at(0).required, 0.4, 1e-12);
}

TEST(SetBack, WhatStandsThereAlreadyIsOnlyHinted) {
  const auto findings =
      found(CheckId::SetBack,
            YardBuilder().bed("Old", kSquareBed).drift(kBluestem, {{0.05, 5.0}}).existing());
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Hint);
}

}  // namespace
}  // namespace tussock
