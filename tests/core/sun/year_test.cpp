// SPDX-License-Identifier: MIT
// Months of a sun map, and maps of part of the ground.
#include <stdexcept>

#include <gtest/gtest.h>

#include "core/sun/map.h"
#include "core/sun/month_map.h"
#include "core/sun/position.h"
#include "core/sun/sun_days.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;
using std::chrono::month;

Yard yardAt(double latitude) {
  Yard yard;
  yard.settings.latitude = Angle::degrees(latitude);
  Tree tree;
  tree.id = Id<Tree>(2);
  tree.at = {6, 2};
  yard.trees = yard.trees.with(tree);
  Building shed;
  shed.id = Id<Building>(3);
  shed.footprint = rectangle({1, 6}, {4, 8});
  yard.buildings = yard.buildings.with(shed);
  return yard;
}

SunMapRequest monthsOf(Box area = {{0, 0}, {12, 9}}) {
  SunMapRequest request;
  request.area = area;
  request.cell = Length::metres(0.5);
  request.detail = SunDetail::Months;
  return request;
}

TEST(SunYearTest, MonthsAreThoseOfTheSeasonInOrder) {
  Yard yard = yardAt(42);
  yard.settings.lastFrost = std::chrono::April / 20;
  yard.settings.firstFrost = std::chrono::June / 10;
  EXPECT_EQ(computeSunMap(yard, monthsOf())->months(),
            (std::vector{std::chrono::April, std::chrono::May, std::chrono::June}));
  const auto south = computeSunMap(yardAt(-35), monthsOf());
  ASSERT_EQ(south->months().size(), 7u);
  EXPECT_EQ(south->months().front(), std::chrono::October);
  EXPECT_EQ(south->months().back(), std::chrono::April);
}

TEST(SunYearTest, SeasonIsTheMeanOfItsDaysAndTheSameWithoutMonths) {
  const Yard yard = yardAt(42);
  SunMapRequest request = monthsOf();
  const auto map = computeSunMap(yard, request);
  request.detail = SunDetail::Season;
  const auto plain = computeSunMap(yard, request);
  EXPECT_TRUE(plain->months().empty());
  const double days[]{30, 31, 30, 31, 31, 30, 31};
  for (int row = 0; row < map->rows(); ++row)
    for (int column = 0; column < map->columns(); ++column) {
      double before = 0.0;
      for (std::size_t i = 0; i < 7; ++i)
        before += map->monthAt(i, column, row).beforeNoon * days[i];
      EXPECT_NEAR(map->at(column, row).beforeNoon, before / 214.0, 1e-5);
      EXPECT_NEAR(map->at(column, row).total(), plain->at(column, row).total(), 1e-5);
    }
}

// Each month's mean, against the month computed day by day.
TEST(SunYearTest, MonthIsTheMeanOfItsDays) {
  const Yard yard = yardAt(42);
  const auto map = computeSunMap(yard, monthsOf());
  for (const unsigned which : {5u, 9u}) {
    double sum = 0.0;
    SunMapRequest request = monthsOf();
    const Polygon bed = rectangle({3, 2}, {10, 6});
    const int days = which == 5u ? 31 : 30;
    for (unsigned day = 1; day <= static_cast<unsigned>(days); ++day) {
      request.day = Date(2026y, month(which), std::chrono::day(day));
      sum += computeSunMap(yard, request)->meanHours(bed).value();
    }
    double mean = 0.0;
    int cells = 0;
    for (int row = 0; row < map->rows(); ++row)
      for (int column = 0; column < map->columns(); ++column)
        if (contains(bed, map->centreOf(column, row)))
          mean += map->monthAt(which - 4u, column, row).total(), ++cells;
    EXPECT_NEAR(mean / cells, sum / days, 0.05) << which;
  }
}

TEST(SunYearTest, PointTellsMonthsAndTheWorst) {
  const auto map = computeSunMap(yardAt(42), monthsOf());
  const auto year = map->yearAt({11, 1});
  ASSERT_TRUE(year);
  ASSERT_EQ(year->months.size(), 7u);
  EXPECT_EQ(year->mean.total(), map->hoursAt({11, 1})->total());
  ASSERT_NE(year->worst(), nullptr);
  EXPECT_EQ(year->worst()->month, std::chrono::October);
  EXPECT_FALSE(map->yearAt({13, 1}));
  EXPECT_EQ(SunYear().worst(), nullptr);
}

TEST(SunYearTest, OneDayHasItsMonth) {
  SunMapRequest request = monthsOf();
  request.day = 2026y / 6 / 21;
  const auto map = computeSunMap(yardAt(42), request);
  ASSERT_EQ(map->months().size(), 1u);
  EXPECT_EQ(map->monthAt(0, 3, 3).total(), map->at(3, 3).total());
}

TEST(SunYearTest, MonthsKeepToTheMemoryLimit) {
  SunMapRequest request = monthsOf({{0, 0}, {400, 400}});
  request.cell = Length::metres(0.2);
  EXPECT_THROW((void)computeSunMap(yardAt(42), request), std::invalid_argument);
}

TEST(SunYearTest, AMonthAndTheWorstMonthAreMapsOfTheirOwn) {
  const auto map = computeSunMap(yardAt(42), monthsOf());
  const SunMap june = monthMapOf(*map, std::chrono::June);
  const SunMap worst = worstMonthMapOf(*map);
  ASSERT_EQ(june.rows(), map->rows());
  int covered = 0;
  for (int row = 0; row < map->rows(); ++row)
    for (int column = 0; column < map->columns(); ++column) {
      const Point p = map->centreOf(column, row);
      ASSERT_EQ(june.underBuilding(column, row), map->underBuilding(column, row));
      covered += june.underBuilding(column, row);
      EXPECT_EQ(june.at(column, row).beforeNoon, map->monthAt(2, column, row).beforeNoon);
      EXPECT_EQ(worst.at(column, row).total(), map->yearAt(p)->worst()->hours.total());
    }
  EXPECT_GT(covered, 10);
  EXPECT_TRUE(monthMapOf(*map, std::chrono::January).empty());
  EXPECT_TRUE(worstMonthMapOf(june).empty());
}

TEST(PartMapTest, OnlyBedsAsksForTheirGround) {
  Yard yard = yardAt(42);
  EXPECT_TRUE(onlyBeds(yard, monthsOf()).area.empty());
  for (const double x : {1.0, 9.0}) {
    Bed bed;
    bed.id = Id<Bed>(static_cast<std::int64_t>(x) + 50);
    bed.outline = rectangle({x, 1}, {x + 2, 3});
    yard.beds = yard.beds.with(bed);
  }
  const auto map = computeSunMap(yard, onlyBeds(yard, monthsOf()));
  EXPECT_TRUE(map->hoursAt({2, 2}) && map->hoursAt({10, 2}));
  EXPECT_FALSE(map->hoursAt({6, 2}));
}

TEST(PartMapTest, CellsUnderTheBedsAreAsInTheWholeMap) {
  const Yard yard = yardAt(42);
  SunMapRequest request = monthsOf();
  const auto whole = computeSunMap(yard, request);
  request.only = {rectangle({1, 1}, {4, 3}), {{{6, 4}, {11, 6}, {8, 8}}, {}}};
  const auto part = computeSunMap(yard, request);
  int known = 0;
  for (int row = 0; row < whole->rows(); ++row)
    for (int column = 0; column < whole->columns(); ++column) {
      const Point p = whole->centreOf(column, row);
      const bool asked = contains(request.only[0], p) || contains(request.only[1], p);
      ASSERT_EQ(part->known(column, row), asked);
      EXPECT_EQ(part->hoursAt(p).has_value(), asked);
      if (!asked) continue;
      ++known;
      EXPECT_EQ(part->at(column, row).total(), whole->at(column, row).total());
      EXPECT_EQ(part->monthAt(2, column, row).total(), whole->monthAt(2, column, row).total());
    }
  EXPECT_GT(known, 30);
}

TEST(PartMapTest, NothingIsKnownOutsideTheArea) {
  SunMapRequest request = monthsOf();
  request.only = {rectangle({40, 40}, {50, 50})};
  const auto map = computeSunMap(yardAt(42), request);
  EXPECT_FALSE(map->hoursAt({3, 3}));
  EXPECT_FALSE(map->meanHours(rectangle({1, 1}, {4, 4})));
}

}  // namespace
}  // namespace tussock
