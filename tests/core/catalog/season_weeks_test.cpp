// SPDX-License-Identifier: MIT
// Half a year is six months, or 26 weeks: common practice.
#include "core/catalog/season_weeks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/catalog/choose.h"
#include "core/catalog/own_plants.h"
#include "core/checks/registry.h"
#include "core/exchange/plant_csv.h"
#include "tests/support/tiny_catalogue.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::kAlexanders;
using test::kAster;
using test::kBergamot;
using testing::Contains;
using testing::Not;

// Three species in flower from April to October, so that the season has no gap.
Yard plantedAt(double latitude) {
  test::YardBuilder builder;
  builder.bed("Bed", "POLYGON((0 0, 10 0, 10 10, 0 10, 0 0))");
  builder.drift(kAlexanders, test::row(5, 0.5, {2, 2}));
  builder.drift(kBergamot, test::row(5, 0.5, {2, 4}));
  builder.drift(kAster, test::row(5, 0.5, {2, 6}));
  Yard yard = builder.build();
  Settings settings = yard.settings;
  settings.latitude = Angle::degrees(latitude);
  settings.lastFrost.reset(), settings.firstFrost.reset();
  yard.settings = settings;
  return yard;
}

TEST(HalfAYear, TwiceIsWhereItWas) {
  for (int month = 1; month <= 12; ++month)
    EXPECT_EQ(halfAYearFromMonth(halfAYearFromMonth(month)), month);
  for (int week = 0; week < kWeeksInYear; ++week)
    EXPECT_EQ(halfAYearFromWeek(halfAYearFromWeek(week)), week);
  EXPECT_EQ(halfAYearFromMonth(5), 11);
  EXPECT_EQ(halfAYearFromMonth(12), 6);
  EXPECT_EQ(halfAYearFromWeek(30), 4);
}

TEST(HalfAYear, AYearRunsFromWinterToWinter) {
  EXPECT_EQ(placeInYear(weekOf(std::chrono::January / 1), Hemisphere::North), 0);
  EXPECT_EQ(placeInYear(weekOf(std::chrono::July / 2), Hemisphere::South), 0);
  EXPECT_EQ(placeInYear(weekOf(std::chrono::June / 30), Hemisphere::South), kWeeksInYear - 1);
  EXPECT_EQ(monthAtPlace(0, Hemisphere::South), 7);
  EXPECT_EQ(monthAtPlace(11, Hemisphere::South), 6);
  EXPECT_EQ(monthAtPlace(11, Hemisphere::North), 12);
  for (const Hemisphere where : {Hemisphere::North, Hemisphere::South})
    for (int week = 0; week < kWeeksInYear; ++week)
      EXPECT_EQ(weekAtPlace(placeInYear(week, where), where), week);
}

TEST(HalfAYear, AFieldIsMovedWhereItTellsTimeAndHoldsIt) {
  EXPECT_EQ(halfAYearOn("bloom_start_month", "5"), "11");
  EXPECT_EQ(halfAYearOn("bloom_end_week", "40"), "14");
  EXPECT_EQ(halfAYearOn("up_by_week", "52"), "26");
  EXPECT_EQ(halfAYearOn("bloom_start_month", ""), "");
  EXPECT_EQ(halfAYearOn("bloom_start_month", "13"), "13");
  EXPECT_EQ(halfAYearOn("bloom_start_month", "May"), "May");
  EXPECT_EQ(halfAYearOn("spacing_cm", "5"), "5");
}

TEST(HalfAYear, ASouthernYardsPlantsFlowerHalfAYearLater) {
  const Catalogue published = test::tinyCatalogue();
  Yard yard = plantedAt(-38.4);
  const Catalogue facts = mergePlants({published, {}, yard}).catalogue;
  const auto months = facts.find(kBergamot)->bloomMonths();  // June to August in the table
  ASSERT_TRUE(months);
  EXPECT_EQ(months->first, 12);
  EXPECT_EQ(months->last, 2);
  const BloomByWeek weeks = bloomByWeek(yard, facts);
  EXPECT_FALSE(weeks[static_cast<std::size_t>(weekOf(std::chrono::January / 15))].empty());
  EXPECT_TRUE(weeks[static_cast<std::size_t>(weekOf(std::chrono::July / 15))].empty());
  yard = plantedAt(38.4);
  EXPECT_EQ(mergePlants({published, {}, yard}).catalogue.find(kBergamot)->bloomMonths()->first, 6);
}

TEST(HalfAYear, AWeekThatIsGivenMovesBy26) {
  std::vector<Species> species{test::tinyCatalogue().species().front()};
  species.front().bloomFirstWeek = 18, species.front().bloomLastWeek = 40;
  species.front().upByWeek = 12;
  const Catalogue south = Catalogue(species).in(Hemisphere::South);
  EXPECT_EQ(south.species().front().bloomWeeks(), (WeekRange{43, 13}));  // counted from 0
  EXPECT_EQ(south.species().front().upByWeek, 38);
  EXPECT_EQ(south.in(Hemisphere::North).species(), Catalogue(species).species());
}

// Your own value is kept with the months of the table, whatever yard it was written in.
TEST(HalfAYear, OwnValuesMoveWithTheRest) {
  const Catalogue published = test::tinyCatalogue();
  const std::vector<OwnSpecies> own{{{}, kBergamot, {{"bloom_start_month", "5"}}}};
  const Yard yard = plantedAt(-38.4);
  const MergedPlants merged = mergePlants({published, own, yard});
  ASSERT_TRUE(merged.errors.empty()) << merged.errors.front().text();
  EXPECT_EQ(merged.catalogue.find(kBergamot)->bloomMonths()->first, 11);
}

TEST(HalfAYear, ChecksFindTheSameBothSidesOfTheEquator) {
  const Catalogue published = test::tinyCatalogue();
  const auto gaps = [&](double latitude) {
    const Yard yard = plantedAt(latitude);
    const Catalogue facts = mergePlants({published, {}, yard}).catalogue;
    return runCheck(CheckId::BloomGap, {yard, facts, nullptr}).size();
  };
  EXPECT_EQ(gaps(-38.4), gaps(38.4));
  // With the table's own months there is no flower in a southern season but at its ends.
  const Yard south = plantedAt(-38.4);
  EXPECT_GT(runCheck(CheckId::BloomGap, {south, published, nullptr}).size(), gaps(38.4));
}

TEST(HalfAYear, SummerIsSoughtByTheSeasonOfTheYard) {
  const Catalogue south = test::tinyCatalogue().in(Hemisphere::South);
  const Species *bergamot = south.find(kBergamot), *alexanders = south.find(kAlexanders);
  EXPECT_THAT(south.search("summer"), Contains(bergamot));
  EXPECT_THAT(south.search("january"), Contains(bergamot));
  EXPECT_THAT(south.search("july"), Not(Contains(bergamot)));
  EXPECT_THAT(south.search("spring"), Contains(alexanders));
}

// What flowers in spring goes before what flowers in fall, and ferns go last, though the southern
// spring lies late in the calendar's year.
TEST(HalfAYear, FirstInFlowerIsFirstAfterTheYardsOwnWinter) {
  const auto namesIn = [](const Catalogue& facts) {
    Choice choice;
    choice.order = RankOrder::FirstBloom;
    std::vector<std::string> names;
    for (const Ranked& one : choose(facts, choice)) names.push_back(one.species->botanicalName);
    return names;
  };
  const auto north = namesIn(test::tinyCatalogue());
  ASSERT_GT(north.size(), 3u);
  EXPECT_EQ(north.front(), test::kSpringBeauty);
  EXPECT_EQ(namesIn(test::tinyCatalogue().in(Hemisphere::South)), north);
}

TEST(HalfAYear, ATableIsWrittenAsTheTableHasIt) {
  const Catalogue published = test::tinyCatalogue();
  EXPECT_EQ(plantsCsv(published.in(Hemisphere::South)), plantsCsv(published));
}

}  // namespace
}  // namespace tussock
