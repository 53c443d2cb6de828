// SPDX-License-Identifier: MIT
#include "core/catalog/bloom.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

Species flower(std::string name, int first, int last) {
  Species species;
  species.botanicalName = std::move(name);
  species.bloomFirstMonth = first;
  species.bloomLastMonth = last;
  return species;
}

const Catalogue kFacts({flower("Aster one", 8, 9), flower("Salvia two", 9, 10),
                        flower("Hamamelis three", 12, 1)});

TEST(Bloom, RunsFromTheFirstWeekOfTheFirstMonthToTheLastOfTheLast) {
  const Species july = flower("Aster one", 7, 7);
  EXPECT_FALSE(july.bloomsInWeek(24));  // 18 to 24 June
  EXPECT_TRUE(july.bloomsInWeek(25));   // holds 1 July
  EXPECT_TRUE(july.bloomsInWeek(30));   // holds 31 July
  EXPECT_FALSE(july.bloomsInWeek(31));
}

TEST(Bloom, MayPassOverNewYear) {
  const Species winter = flower("Hamamelis three", 12, 1);
  EXPECT_TRUE(winter.bloomsInMonth(12));
  EXPECT_TRUE(winter.bloomsInMonth(1));
  EXPECT_FALSE(winter.bloomsInMonth(2));
  EXPECT_TRUE(winter.bloomsInWeek(51));
  EXPECT_TRUE(winter.bloomsInWeek(0));
  EXPECT_FALSE(winter.bloomsInWeek(26));
}

// By hand, weeks counted from 1: 15 holds 9 to 15 April, 20 holds 14 to 20 May.
TEST(Bloom, GoesByItsWeeksWhereTheyAreKnown) {
  Species bluebells = flower("Mertensia virginica", 4, 5);
  bluebells.bloomFirstWeek = 15, bluebells.bloomLastWeek = 20;
  EXPECT_EQ(bluebells.bloomWeeks(), (WeekRange{14, 19}));
  EXPECT_FALSE(bluebells.bloomsInWeek(13));
  EXPECT_TRUE(bluebells.bloomsInWeek(14));
  EXPECT_FALSE(bluebells.bloomsInWeek(20));
  EXPECT_TRUE(bluebells.bloomsInMonth(5));
}

TEST(Bloom, TakesAMonthForTheEndThatHasNoWeek) {
  Species aster = flower("Aster late", 9, 10);
  aster.bloomFirstWeek = 37;
  EXPECT_EQ(aster.bloomWeeks(), (WeekRange{36, weekOf(std::chrono::October / 31)}));
}

TEST(Bloom, TellsTheMonthsThatWeeksAloneLieIn) {
  Species own;
  EXPECT_FALSE(own.bloomWeeks());
  own.bloomFirstWeek = 14;
  EXPECT_FALSE(own.bloomWeeks()) << "one end says nothing";
  own.bloomLastWeek = 18;  // 30 April to 6 May
  const auto months = own.bloomMonths();
  ASSERT_TRUE(months);
  EXPECT_EQ(months->first, 4);
  EXPECT_EQ(months->last, 5);
  EXPECT_TRUE(showsFlowers(own));
}

TEST(Bloom, GroundIsThatOfATriangularPattern) {
  // 12 in on centre: 1.1547 plants to the square foot (144 / s² x 2/√3), so 1155 of them cover
  // 1000 square feet.
  Drift drift;
  drift.spacing = Length::inches(12);
  drift.plants.resize(1155);
  EXPECT_NEAR(groundOf(drift).squareFeet(), 1000.0, 1.0);
}

TEST(Bloom, CountsTheYardOrOneBed) {
  const Yard yard = test::YardBuilder()
                        .bed("A", "POLYGON((0 0,4 0,4 4,0 4,0 0))")
                        .drift("Aster one", test::row(3, 0.4, {0.5, 0.5}))
                        .bed("B", "POLYGON((5 0,9 0,9 4,5 4,5 0))")
                        .drift("Salvia two", test::row(5, 0.4, {5.5, 0.5}))
                        .drift("Unknown plant", test::row(7, 0.4, {5.5, 1.5}))
                        .build();
  const BloomByWeek both = bloomByWeek(yard, kFacts);
  constexpr std::size_t kMidSeptember = 36;
  ASSERT_EQ(both[kMidSeptember].size(), 2u);
  EXPECT_EQ(both[kMidSeptember][0].species->botanicalName, "Salvia two");  // more ground first
  EXPECT_TRUE(both[10].empty());
  EXPECT_NEAR(both[kMidSeptember][0].ground.squareMetres(), 5 * 0.16 * 0.8660254, 1e-6);
  EXPECT_NEAR(both[kMidSeptember][1].ground.squareMetres(), 3 * 0.16 * 0.8660254, 1e-6);

  const Id<Bed> first = yard.beds.begin()->id;
  ASSERT_EQ(bloomByWeek(yard, kFacts, first)[kMidSeptember].size(), 1u);
}

TEST(Bloom, GrassesAndSedgesAreNotShown) {
  Species grass = flower("Panicum four", 7, 9);
  grass.habit = Habit::Grass;
  EXPECT_FALSE(showsFlowers(grass));
  grass.habit = Habit::Forb;
  EXPECT_TRUE(showsFlowers(grass));
  grass.bloomFirstMonth.reset();
  EXPECT_FALSE(showsFlowers(grass));
}

}  // namespace
}  // namespace tussock
