// SPDX-License-Identifier: MIT
// Shares that do not come to the whole. The figures are arithmetic.
#include "core/planting/whole_shares.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tussock {
namespace {

using testing::DoubleNear;
using testing::ElementsAre;

auto near(double value) {
  return DoubleNear(value, 1e-9);
}

TEST(WholeShares, MoreThanTheWholeIsTakenInProportion) {
  const WholeShares whole = wholeShares({{1.5}, {0.5}});
  EXPECT_TRUE(whole.proportioned);
  EXPECT_DOUBLE_EQ(whole.sum, 2.0);
  EXPECT_THAT(whole.shares, ElementsAre(near(0.75), near(0.25)));
}

TEST(WholeShares, SoIsLessWhereNoSpeciesIsOpen) {
  const WholeShares whole = wholeShares({{0.3}, {0.1}});
  EXPECT_TRUE(whole.proportioned);
  EXPECT_THAT(whole.shares, ElementsAre(near(0.75), near(0.25)));
  const WholeShares open = wholeShares({{0.3}, {0.1}, {0.0}});
  EXPECT_FALSE(open.proportioned);
  EXPECT_THAT(open.shares, ElementsAre(near(0.3), near(0.1), near(0.0)));
}

// Ground covers stay as few as they were asked for, and without a share they are not open.
TEST(WholeShares, WhatGrowsBeneathKeepsItsShareWhereTheMainLayerMakesUpTheRest) {
  const WholeShares whole = wholeShares({{0.3}, {0.1}, {0.2, true}, {0.0, true}});
  EXPECT_TRUE(whole.proportioned);
  EXPECT_THAT(whole.shares, ElementsAre(near(0.6), near(0.2), near(0.2), near(0.0)));
  EXPECT_FALSE(wholeShares({{0.2, true}}).proportioned);
  EXPECT_FALSE(wholeShares({}).proportioned);
}

TEST(WholeShares, HalfAPerCentIsRounding) {
  for (const double sum : {0.995, 0.999, 1.001, 1.005})
    EXPECT_FALSE(wholeShares({{0.5}, {sum - 0.5}}).proportioned) << sum;
  for (const double sum : {0.99, 1.01})
    EXPECT_TRUE(wholeShares({{0.5}, {sum - 0.5}}).proportioned) << sum;
  EXPECT_THAT(wholeShares({{0.5}, {0.499}}).shares,
              ElementsAre(near(0.5 / 0.999), near(0.499 / 0.999)));
}

}  // namespace
}  // namespace tussock
