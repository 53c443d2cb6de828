// SPDX-License-Identifier: MIT
// Groups of three, five or seven please more than even ones (Ask Extension 351222, Minnesota,
// 2016); garden press puts the end of the effect at about nine plants.
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

YardBuilder driftOf(int count) {
  return YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, row(count, 0.4, {1.0, 5.0}));
}

class OddCountPasses : public testing::TestWithParam<int> {};
TEST_P(OddCountPasses, Unremarked) {
  EXPECT_TRUE(found(CheckId::OddCount, driftOf(GetParam())).empty());
}
INSTANTIATE_TEST_SUITE_P(Odd, OddCountPasses, testing::Values(1, 3, 5, 7, 9, 11, 13));

TEST(OddCount, EvenUpToNineIsACaution) {
  for (const int count : {2, 4, 6, 8}) {
    const auto findings = found(CheckId::OddCount, driftOf(count));
    ASSERT_EQ(findings.size(), 1U) << count;
    EXPECT_EQ(findings[0].severity, Severity::Caution);
    EXPECT_EQ(findings[0].measured, count);
  }
}

TEST(OddCount, EvenAboveNineIsAHint) {
  EXPECT_EQ(found(CheckId::OddCount, driftOf(10)).at(0).severity, Severity::Hint);
}

TEST(OddCount, ExistingDriftsAreExempt) {
  EXPECT_TRUE(found(CheckId::OddCount, driftOf(4).existing()).empty());
}

TEST(OddCount, GroundLayerAndBulbsAreReadAsACarpet) {
  EXPECT_TRUE(found(CheckId::OddCount, driftOf(4).layer(Layer::Ground)).empty());
  EXPECT_TRUE(found(CheckId::OddCount, driftOf(4).layer(Layer::Bulbs)).empty());
}

}  // namespace
}  // namespace tussock
