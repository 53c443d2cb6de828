// SPDX-License-Identifier: MIT
// Full sun is six hours and more in all sources seen (Penn State Extension, Planting in sun or
// shade; Lady Bird Johnson Wildflower Center); part is three to six hours in the usual profile.
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

std::vector<Finding> under(double hours, const char* species, Layer layer = Layer::Main) {
  const SunMap sun = evenSun(hours);
  return found(
      CheckId::SunNeed,
      YardBuilder().bed("Walk", kSquareBed).drift(species, row(3, 0.4, {4.0, 5.0})).layer(layer),
      &sun);
}

TEST(SunNeed, CleanYardHasNone) {
  EXPECT_TRUE(under(9.0, kBluestem).empty());
}

TEST(SunNeed, ExactlyAtTheLeastPasses) {
  EXPECT_TRUE(under(6.0, kBluestem).empty());
}

TEST(SunNeed, JustUnderIsAHintAsNoMapIsThatExact) {
  const auto findings = under(5.9, kBluestem);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].severity, Severity::Hint);
  EXPECT_NEAR(findings[0].measured, 5.9, 1e-5);
  EXPECT_EQ(findings[0].required, 6.0);
}

TEST(SunNeed, SeverityGrowsWithTheHoursMissing) {
  EXPECT_EQ(under(5.0, kBluestem).at(0).severity, Severity::Caution);
  EXPECT_EQ(under(3.5, kBluestem).at(0).severity, Severity::Alert);
}

TEST(SunNeed, TooMuchForAShadePlantIsFoundButNoAlert) {
  const auto findings = under(8.0, kFoamflower);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].about, "too much");
  EXPECT_EQ(findings[0].required, 3.0);
  EXPECT_EQ(findings[0].severity, Severity::Caution);
  EXPECT_TRUE(under(3.0, kFoamflower).empty());
}

TEST(SunNeed, ASpeciesOfTwoClassesTakesBoth) {
  EXPECT_TRUE(under(3.0, kBergamot).empty());
  EXPECT_TRUE(under(12.0, kBergamot).empty());
  EXPECT_EQ(under(2.0, kBergamot).size(), 1U);
}

TEST(SunNeed, BulbsAreOnlyHintedAsTheyFlowerBeforeTheLeaves) {
  EXPECT_EQ(under(1.0, kSpringBeauty, Layer::Bulbs).at(0).severity, Severity::Hint);
}

TEST(SunNeed, SaysNothingWithoutAMapOrFacts) {
  const auto yard = YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, {{5.0, 5.0}});
  EXPECT_TRUE(found(CheckId::SunNeed, yard).empty());
  EXPECT_TRUE(under(0.0, "Unknown species").empty());
}

TEST(SunNeed, TakesTheMeanOfTheDriftsPlants) {
  SunMap sun = evenSun(8.0);
  for (int i = 0; i < 80; ++i)
    for (int j = 0; j < 20; ++j) sun.set(j, i, {0.0, 5.0});  // x below 5 m
  const auto yard =
      YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, {{2.0, 5.0}, {3.0, 5.0}, {6.0, 5.0}});
  EXPECT_TRUE(found(CheckId::SunNeed, yard, &sun).empty());  // (5 + 5 + 8) / 3 = 6
  const auto shadier =
      YardBuilder().bed("Walk", kSquareBed).drift(kBluestem, row(4, 0.5, {2.0, 5.0}));
  EXPECT_NEAR(found(CheckId::SunNeed, shadier, &sun).at(0).measured, 5.0, 1e-6);
}

}  // namespace
}  // namespace tussock
