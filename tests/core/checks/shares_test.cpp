// SPDX-License-Identifier: MIT
// "No more than 10 % of any species, no more than 20 % of any genus, and no more than 30 % of any
// family": Santamour F.S. (1990) Trees for urban planting: diversity, uniformity, and common sense.
// Written for the street trees of a city; against such limits: Richards N.A. (1993) Reasonable
// guidelines for street tree diversity, J. Arboriculture 19(6).
#include "core/checks/shares.h"

#include <gtest/gtest.h>

#include "core/checks/share_excess.h"
#include "tests/support/run_check.h"

namespace tussock {
namespace {

using namespace test;

// Drifts of `others` plants of each of eleven made-up species, each its own genus and family's
// stranger, and one of `count` plants of the species asked about.
YardBuilder mixed(const char* species, int count, int others) {
  YardBuilder yard;
  yard.bed("Walk", kSquareBed).drift(species, row(count, 0.1, {1.0, 9.0}));
  for (int i = 0; i < 11; ++i)
    yard.drift("Genus" + std::to_string(i) + " species", row(others, 0.1, {1.0, 0.5 + 0.5 * i}));
  return yard;
}

TEST(SpeciesShare, CleanYardHasNone) {
  EXPECT_TRUE(found(CheckId::SpeciesShare, mixed(kBergamot, 8, 8)).empty());
}

TEST(SpeciesShare, ExactlyATenthPasses) {  // 11 of 110
  EXPECT_TRUE(found(CheckId::SpeciesShare, mixed(kBergamot, 11, 9)).empty());
}

TEST(SpeciesShare, JustUnderATenthPasses) {  // 10 of 109
  EXPECT_TRUE(found(CheckId::SpeciesShare, mixed(kBergamot, 10, 9)).empty());
}

TEST(SpeciesShare, JustOverATenthIsAHint) {  // 12 of 111
  const auto findings = found(CheckId::SpeciesShare, mixed(kBergamot, 12, 9));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_NEAR(findings[0].measured, 12.0 / 111.0, 1e-12);
  EXPECT_EQ(findings[0].about, kBergamot);
  EXPECT_EQ(findings[0].severity, Severity::Hint);
  EXPECT_EQ(findings[0].plants.size(), 12U);
}

TEST(SpeciesShare, MoreThanTwiceTheLimitIsACaution) {  // 30 of 129
  EXPECT_EQ(found(CheckId::SpeciesShare, mixed(kBergamot, 30, 9)).at(0).severity,
            Severity::Caution);
}

TEST(SpeciesShare, OfFewSpeciesOneIsBoundToBeOver) {
  const auto small = YardBuilder()
                         .bed("Walk", kSquareBed)
                         .drift(kBergamot, row(61, 0.1, {1.0, 1.0}))
                         .drift(kConeflower, row(45, 0.1, {1.0, 2.0}));
  EXPECT_EQ(found(CheckId::SpeciesShare, small).at(0).severity, Severity::Hint);
  EXPECT_TRUE(tooFewKinds(9, 0.1));
  EXPECT_FALSE(tooFewKinds(10, 0.1));
}

TEST(SpeciesShare, SaysNothingOfAHandfulOfPlants) {
  auto few = YardBuilder().bed("Walk", kSquareBed).drift(kBergamot, row(99, 0.1, {1.0, 1.0}));
  EXPECT_TRUE(found(CheckId::SpeciesShare, few).empty());
  few.drift(kBergamot, {{1.0, 2.0}});
  EXPECT_EQ(found(CheckId::SpeciesShare, few).size(), 1U);
}

TEST(SpeciesShare, CountsTheMainLayerOnlyAndWhatStandsThere) {
  auto yard = mixed(kBergamot, 12, 9);
  EXPECT_TRUE(
      found(CheckId::SpeciesShare, yard.drift(kConeflower, row(9, 0.1, {1.0, 8.0})).existing())
          .empty());  // 12 of 120
  yard.layer(Layer::Ground);
  EXPECT_EQ(found(CheckId::SpeciesShare, yard).size(), 1U);
}

TEST(GenusShare, JustOverAFifthIsFound) {  // 25 of 124, and 24 of 123 after
  EXPECT_EQ(found(CheckId::GenusShare, mixed(kBergamot, 25, 9)).at(0).about, "Monarda");
  EXPECT_TRUE(found(CheckId::GenusShare, mixed(kBergamot, 24, 9)).empty());
}

TEST(GenusShare, ExactlyAFifthPasses) {  // 22 of 110
  EXPECT_TRUE(found(CheckId::GenusShare, mixed(kBergamot, 22, 8)).empty());
}

TEST(FamilyShare, AddsUpTheGeneraOfAFamily) {  // 44 of 143; the strangers' families are not known
  auto yard = mixed(kConeflower, 22, 9);
  EXPECT_TRUE(found(CheckId::FamilyShare, yard).empty());
  const auto findings = found(CheckId::FamilyShare, yard.drift(kAster, row(22, 0.1, {1.0, 9.5})));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].about, "Asteraceae");
  EXPECT_NEAR(findings[0].measured, 44.0 / 143.0, 1e-12);
}

TEST(FamilyShare, ExactlyThreeTenthsPasses) {  // 33 of 110
  EXPECT_TRUE(found(CheckId::FamilyShare, mixed(kConeflower, 33, 7)).empty());
}

TEST(ShareExcess, SumsWhatEachHasOverTheLimit) {  // 20 and 20 of 139, a tenth is asked
  const auto yard = mixed(kBergamot, 20, 9).drift(kConeflower, row(20, 0.1, {1.0, 9.5}));
  const Yard two = yard.build();
  const ShareExcess excess = shareExcess(two, tinyCatalogue(), Rank::Species, 0.1);
  EXPECT_NEAR(excess.over, 2.0 * (20.0 / 139.0 - 0.1) / 0.1, 1e-12);
  EXPECT_EQ(excess.drifts.size(), 2U);
}

TEST(ShareExcess, GrowsLessWhenOneOfTwoAlikeDoes) {
  const auto over = [](int plants) {
    const auto yard = mixed(kBergamot, 20, 9).drift(kConeflower, row(plants, 0.1, {1.0, 9.5}));
    return shareExcess(yard.build(), tinyCatalogue(), Rank::Species, 0.1).over;
  };
  EXPECT_LT(over(18), over(20));
  EXPECT_NEAR(over(13), (20.0 / 132.0 - 0.1) / 0.1, 1e-12);  // 13 of 132 are less than a tenth
}

TEST(ShareExcess, OfAFamilyThatIsNotKnownIsNone) {
  const Yard yard = mixed("Genus0 other", 60, 9).build();
  EXPECT_EQ(shareExcess(yard, tinyCatalogue(), Rank::Family, 0.3).over, 0.0);
  EXPECT_GT(shareExcess(yard, tinyCatalogue(), Rank::Species, 0.1).over, 0.0);
}

}  // namespace
}  // namespace tussock
