// SPDX-License-Identifier: MIT
#include "core/planting/bed_mix.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/season_weeks.h"
#include "tests/support/run_check.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::kAlexanders;
using test::kAster;
using test::kBergamot;
using test::kConeflower;
using test::kGoldenrod;
using test::kSedge;
using testing::IsEmpty;
using testing::SizeIs;

class BedMixTest : public testing::Test {
 protected:
  // Purple and, across from it in OKLCH, a yellow green; blue lies at less than 60 degrees.
  BedMixTest() {
    std::vector<Species> all = test::tinyCatalogue().species();
    for (Species& one : all) {
      if (one.botanicalName == kBergamot) one.flowerColour = Rgb{160, 60, 190};
      if (one.botanicalName == kConeflower) one.flowerColour = Rgb{120, 170, 20};
      if (one.botanicalName == kAster) one.flowerColour = Rgb{90, 90, 220};
    }
    facts_ = Catalogue(std::move(all));
    builder_.bed("Bed", test::kSquareBed);
  }
  [[nodiscard]] BedMix mix(MixOf what) {
    yard_ = builder_.build();
    Bed bed = *yard_.beds.find(builder_.lastBed());
    bed.plantList = list_;
    return mixOf(yard_, facts_, bed, what, std::nullopt);
  }

  Catalogue facts_;
  test::YardBuilder builder_;
  std::vector<ListedSpecies> list_;
  Yard yard_;
};

TEST_F(BedMixTest, AnEmptyBedLacksNothing) {
  const BedMix none = mix(MixOf::Planted);
  EXPECT_TRUE(none.figures.empty());
  EXPECT_THAT(none.remedies, IsEmpty());
  EXPECT_THAT(none.colours, IsEmpty());
}

TEST_F(BedMixTest, TheListCountsByItsSharesAndThePlantingByItsPlants) {
  list_ = {{kBergamot, 0.75}, {kSedge, 0.25}};
  builder_.drift(kAster, test::row(3, 0.4, {2, 2})).drift(kSedge, test::row(1, 0.4, {2, 4}));
  const BedMix listed = mix(MixOf::List), planted = mix(MixOf::Planted);
  EXPECT_EQ(listed.figures.bySpecies.front().name, kBergamot);
  EXPECT_DOUBLE_EQ(listed.figures.bySpecies.front().share, 0.75);
  EXPECT_EQ(planted.figures.bySpecies.front().name, kAster);
  EXPECT_DOUBLE_EQ(planted.figures.bySpecies.front().share, 0.75);
  EXPECT_DOUBLE_EQ(planted.figures.grassShare, 0.25);
  EXPECT_EQ(planted.season, setOf(seasonWeeks(yard_.settings)));
}

TEST_F(BedMixTest, WhatIsMissingComesWithSpeciesThatAreNotThereYet) {
  list_ = {{kAlexanders, 0.0}, {kAster, 0.0}};
  const BedMix listed = mix(MixOf::List);
  ASSERT_FALSE(listed.remedies.empty());
  EXPECT_EQ(listed.remedies.front().missing.lack, Lack::Flowers);
  EXPECT_THAT(listed.remedies.front().species, SizeIs(3));
  for (const Remedy& remedy : listed.remedies)
    for (const Ranked& one : remedy.species) {
      EXPECT_TRUE(one.suits());
      EXPECT_NE(one.species->botanicalName, kAlexanders);
      EXPECT_NE(one.species->botanicalName, kAster);
    }
}

// Bergamot flowers June to August, coneflower July to September, aster August to October.
TEST_F(BedMixTest, ColoursPairInTheWeeksTheyFlowerTogether) {
  list_ = {{kBergamot, 0.0}, {kConeflower, 0.0}, {kAster, 0.0}};
  const BedMix listed = mix(MixOf::List);
  ASSERT_FALSE(listed.colours.empty());
  EXPECT_EQ(listed.colours.front().one->botanicalName, kBergamot);
  EXPECT_EQ(listed.colours.front().other->botanicalName, kConeflower);
  EXPECT_EQ(listed.colours.front().relation, ColourRelation::Complementary);
  const WeekSet both =
      weeksInFlower(*facts_.find(kBergamot)) & weeksInFlower(*facts_.find(kConeflower));
  EXPECT_EQ(listed.colours.front().weeks, std::popcount(both));
  EXPECT_GE(listed.colours.front().weeks, 8);  // July and August
}

TEST_F(BedMixTest, AsPlantedOnlyNeighboursPair) {
  builder_.drift(kBergamot, test::row(3, 0.4, {1, 1}));
  builder_.drift(kConeflower, test::row(3, 0.4, {1, 1.4}));
  builder_.drift(kAster, test::row(3, 0.4, {1, 5}));
  const BedMix planted = mix(MixOf::Planted);
  ASSERT_THAT(planted.colours, SizeIs(1));
  EXPECT_EQ(planted.colours.front().relation, ColourRelation::Complementary);
}

TEST_F(BedMixTest, ColoursThatAreNeverSeenTogetherAreNoPair) {
  std::vector<Species> all = facts_.species();
  for (Species& one : all)
    if (one.botanicalName == kBergamot) one.bloomFirstMonth = one.bloomLastMonth = 5;
  facts_ = Catalogue(std::move(all));
  list_ = {{kBergamot, 0.0}, {kConeflower, 0.0}};
  EXPECT_THAT(mix(MixOf::List).colours, IsEmpty());
}

}  // namespace
}  // namespace tussock
