// SPDX-License-Identifier: MIT
#include "core/sun/map.h"

#include <cmath>
#include <stdexcept>

#include <gtest/gtest.h>

#include "core/sun/position.h"
#include "core/sun/sun_days.h"
#include "tests/core/sun/ray_scene.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

Yard yardIn(double latitude) {
  Yard yard;
  yard.settings.latitude = Angle::degrees(latitude);
  return yard;
}

SunMapRequest onDay(Date day, double cell = 0.5, int step = 10) {
  SunMapRequest request;
  request.area = {{0, 0}, {12, 9}};
  request.cell = Length::metres(cell);
  request.stepMinutes = step;
  request.day = day;
  return request;
}

Tree treeAt(Point at, std::int64_t id) {
  Tree tree;
  tree.id = Id<Tree>(id);
  tree.at = at;
  return tree;
}

Building houseAt(Point low, Point high, std::int64_t id) {
  Building building;
  building.id = Id<Building>(id);
  building.footprint = rectangle(low, high);
  building.eave = building.ridge = Length::metres(4);
  return building;
}

double meanDifference(const SunMap& a, const SunMap& b, const Polygon& over) {
  return std::abs(a.meanHours(over).value() - b.meanHours(over).value());
}

template <class F>
void forEachCell(const SunMap& map, F&& f) {
  for (int row = 0; row < map.rows(); ++row)
    for (int column = 0; column < map.columns(); ++column) f(column, row);
}

TEST(SunMapTest, OpenGroundHasTheWholeDay) {
  const auto map = computeSunMap(yardIn(44.98), onDay(2026y / 6 / 21));
  const Daylight up = timeAbove(Angle(), 2026y / 6 / 21, Angle::degrees(44.98), Angle());
  forEachCell(*map, [&](int column, int row) {
    EXPECT_NEAR(map->at(column, row).total(), up.hours, 1e-5);
    EXPECT_NEAR(map->at(column, row).beforeNoon, up.hours / 2.0, 0.02);
  });
}

TEST(SunMapTest, MidnightSunAndPolarNight) {
  EXPECT_NEAR(computeSunMap(yardIn(75), onDay(2026y / 6 / 21))->at(3, 3).total(), 24.0, 1e-5);
  EXPECT_EQ(computeSunMap(yardIn(75), onDay(2026y / 12 / 21))->at(3, 3).total(), 0.0);
}

// The sun comes up at the equinox, at 14:46 UTC (see PolarTest), so after noon at the prime
// meridian.
TEST(SunMapTest, TheFirstDayAtThePoleIsCountedFromItsSunrise) {
  const SunHours first = computeSunMap(yardIn(90), onDay(2026y / 3 / 20))->at(3, 3);
  EXPECT_EQ(first.beforeNoon, 0.0);
  EXPECT_NEAR(first.afterNoon, 9.3, 0.2);
  const SunHours end = computeSunMap(yardIn(-90), onDay(2026y / 3 / 20))->at(3, 3);
  EXPECT_NEAR(end.beforeNoon, 12.0, 1e-5);
  EXPECT_NEAR(end.afterNoon, 2.5, 0.2);
  EXPECT_NEAR(computeSunMap(yardIn(90), onDay(2026y / 3 / 21))->at(3, 3).total(), 24.0, 1e-5);
}

TEST(SunMapTest, WallOnTheEastTakesTheMorning) {
  Yard yard = yardIn(40);
  Barrier wall;
  wall.id = Id<Barrier>(2);
  wall.line = {{7, -20}, {7, 30}};
  wall.height = Length::metres(3);
  yard.barriers = yard.barriers.with(wall);
  const auto map = computeSunMap(yard, onDay(2026y / 6 / 21));
  const auto west = map->hoursAt({5.9, 5}).value();
  const auto east = map->hoursAt({8, 5}).value();
  EXPECT_LT(west.beforeNoon, 3.0);
  EXPECT_GT(west.afterNoon, 7.0);
  EXPECT_NEAR(west.beforeNoon, east.afterNoon, 0.1);
}

TEST(SunMapTest, GroundUnderABuildingIsMarkedAndDark) {
  Yard yard = yardIn(40);
  yard.buildings = yard.buildings.with(houseAt({2, 2}, {6, 5}, 2));
  const auto map = computeSunMap(yard, onDay(2026y / 6 / 21));
  int covered = 0;
  forEachCell(*map, [&](int column, int row) {
    const Point p = map->centreOf(column, row);
    const bool inside = p.x > 2 && p.x < 6 && p.y > 2 && p.y < 5;
    EXPECT_EQ(map->underBuilding(column, row), inside);
    if (inside) {
      EXPECT_EQ(map->at(column, row).total(), 0.0);
    }
    covered += inside;
  });
  EXPECT_EQ(covered, 48);
}

TEST(SunMapTest, CourtyardIsNotUnderTheBuilding) {
  Yard yard = yardIn(40);
  Building building = houseAt({1, 1}, {11, 8}, 2);
  building.footprint.holes.push_back(rectangle({4, 3}, {9, 6}).outer);
  building.eave = Length::metres(2);
  yard.buildings = yard.buildings.with(building);
  const auto map = computeSunMap(yard, onDay(2026y / 6 / 21));
  EXPECT_GT(map->hoursAt({6.6, 5.2})->total(), 4.0);
  EXPECT_FALSE(map->underBuilding(13, 10));
  EXPECT_TRUE(map->underBuilding(4, 4));
}

TEST(SunMapTest, AddingASolidNeverAddsSun) {
  std::mt19937_64 random(7);
  for (int round = 0; round < 12; ++round) {
    test::RayScene scene = test::randomScene(random);
    Yard yard = test::yardOf(scene);
    yard.settings.latitude = Angle::degrees(42);
    const auto without = computeSunMap(yard, onDay(2026y / 5 / 9));
    yard.trees = yard.trees.with(treeAt({6, 4}, 90));
    yard.buildings = yard.buildings.with(houseAt({8, 1}, {10, 3}, 91));
    const auto with = computeSunMap(yard, onDay(2026y / 5 / 9));
    double taken = 0.0;
    forEachCell(*with, [&](int column, int row) {
      const double difference = without->at(column, row).total() - with->at(column, row).total();
      EXPECT_GE(difference, -1e-5);
      taken += difference;
    });
    EXPECT_GT(taken, 0.0);
  }
}

TEST(SunMapTest, WhatLetsAllThroughIsNotThere) {
  Yard yard = yardIn(42);
  Tree tree = treeAt({6, 4}, 2);
  tree.opennessLeaf = tree.opennessBare = 1.0;
  tree.trunkDiameter = Length();
  yard.trees = yard.trees.with(tree);
  const auto open = computeSunMap(yardIn(42), onDay(2026y / 5 / 9));
  const auto map = computeSunMap(yard, onDay(2026y / 5 / 9));
  forEachCell(*map, [&](int column, int row) {
    EXPECT_EQ(map->at(column, row).total(), open->at(column, row).total());
  });
}

struct SeasonYard : testing::Test {
  Yard yard = yardIn(42);
  SunMapRequest request = onDay(2026y / 5 / 9);
  SeasonYard() {
    yard.buildings = yard.buildings.with(houseAt({1, 1}, {5, 3}, 2));
    yard.trees = yard.trees.with(treeAt({8, 3}, 3));
    request.day.reset();
  }
};

TEST_F(SeasonYard, FinerCellsAndStepsConverge) {
  const Polygon bed = rectangle({4, 4}, {10, 8});
  request.cell = Length::metres(0.1), request.stepMinutes = 2;
  const auto fine = computeSunMap(yard, request);
  request.cell = Length::metres(0.25), request.stepMinutes = 10;
  const auto usual = computeSunMap(yard, request);
  request.cell = Length::metres(1.0), request.stepMinutes = 40;
  const auto coarse = computeSunMap(yard, request);
  EXPECT_LT(meanDifference(*usual, *fine, bed), 0.02);
  EXPECT_LT(meanDifference(*coarse, *fine, bed), 0.25);
  EXPECT_LT(meanDifference(*usual, *fine, bed), meanDifference(*coarse, *fine, bed));
}

// The season is computed by classes of like days; here it is again, day by day.
TEST_F(SeasonYard, MeanOfAllItsDaysAgrees) {
  const auto season = computeSunMap(yard, request);
  const auto days = daysOf(growingSeason(yard.settings), request.year);
  ASSERT_EQ(days.size(), 214u);
  const std::size_t size = static_cast<std::size_t>(season->rows() * season->columns());
  std::vector<double> sums(size);
  for (const Date day : days) {
    request.day = day;
    const auto map = computeSunMap(yard, request);
    std::size_t i = 0;
    forEachCell(*map, [&](int column, int row) { sums[i++] += map->at(column, row).total(); });
  }
  std::size_t i = 0;
  double worst = 0.0;
  double mean = 0.0;
  forEachCell(*season, [&](int column, int row) {
    const double gap = std::abs(season->at(column, row).total() - sums[i++] / 214.0);
    worst = std::max(worst, gap);
    mean += gap / static_cast<double>(size);
  });
  EXPECT_LT(worst, 0.1);
  EXPECT_LT(mean, 0.02);
  RecordProperty("worst_hours", std::to_string(worst));
  RecordProperty("mean_hours", std::to_string(mean));
}

TEST_F(SeasonYard, BareWeeksCountAsBare) {
  Tree late = treeAt({8, 3}, 3);
  late.leafOn = std::chrono::July / 1;
  Yard other = yard;
  other.trees = other.trees.with(late);
  const Polygon bed = rectangle({6, 4}, {10, 8});
  EXPECT_GT(computeSunMap(other, request)->meanHours(bed).value(),
            computeSunMap(yard, request)->meanHours(bed).value() + 0.05);
}

TEST_F(SeasonYard, ProgressRisesToOne) {
  std::vector<double> shares;
  ASSERT_TRUE(computeSunMap(yard, request, {}, [&](double share) { shares.push_back(share); }));
  ASSERT_GT(shares.size(), 3u);
  EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
  EXPECT_EQ(shares.back(), 1.0);
}

TEST_F(SeasonYard, StoppingGivesNothing) {
  std::stop_source source;
  const auto stopEarly = [&](double) { source.request_stop(); };
  EXPECT_FALSE(computeSunMap(yard, request, source.get_token(), stopEarly));
}

TEST_F(SeasonYard, IsTheSameEachTime) {
  const auto a = computeSunMap(yard, request);
  const auto b = computeSunMap(yard, request);
  forEachCell(*a, [&](int column, int row) {
    EXPECT_EQ(a->at(column, row).total(), b->at(column, row).total());
  });
}

TEST(SunMapTest, SouthernSeasonRunsOverTheNewYear) {
  const auto days = daysOf(growingSeason(yardIn(-35).settings), 2026);
  EXPECT_EQ(days.front(), Date(2026y / 10 / 1));
  EXPECT_EQ(days.back(), Date(2027y / 4 / 30));
  EXPECT_EQ(days.size(), 212u);
}

TEST(SunMapTest, TooFineAGridIsRefusedWithAdvice) {
  SunMapRequest request = onDay(2026y / 6 / 21, 0.001);
  try {
    (void)computeSunMap(yardIn(40), request);
    FAIL() << "the grid was taken";
  } catch (const std::invalid_argument& error) {
    EXPECT_NE(std::string(error.what()).find("256 MB"), std::string::npos);
    EXPECT_NE(std::string(error.what()).find("larger cells"), std::string::npos);
  }
}

TEST(SunMapTest, CellsAndStepsMustBeAboveZero) {
  EXPECT_THROW((void)computeSunMap(yardIn(40), onDay(2026y / 6 / 21, 0.0)), std::invalid_argument);
  EXPECT_THROW((void)computeSunMap(yardIn(40), onDay(2026y / 6 / 21, 0.5, 0)),
               std::invalid_argument);
}

TEST(SunMapTest, NoAreaGivesAnEmptyMap) {
  SunMapRequest request = onDay(2026y / 6 / 21);
  request.area = Box();
  EXPECT_TRUE(computeSunMap(yardIn(40), request)->empty());
}

TEST(SunMapTest, HoursAreToldByCellAndOnlyInside) {
  SunMap map({{10, 20}, {12, 21}}, Length::metres(0.5), 4, 2);
  map.set(3, 1, {1.5, 2.5});
  EXPECT_EQ(map.centreOf(3, 1), (Point{11.75, 20.75}));
  EXPECT_EQ(map.hoursAt({11.6, 20.9})->total(), 4.0);
  EXPECT_EQ(map.hoursAt({12.0, 21.0})->total(), 4.0);
  EXPECT_EQ(map.hoursAt({11.4, 20.9})->total(), 0.0);
  EXPECT_FALSE(map.hoursAt({12.1, 20.5}));
  EXPECT_NEAR(map.meanHours(rectangle({11, 20.5}, {12, 21})).value(), 2.0, 1e-12);
  EXPECT_FALSE(map.meanHours(rectangle({11.3, 20.3}, {11.4, 20.4})));
  EXPECT_FALSE(map.meanHours(rectangle({30, 30}, {31, 31})));
}

TEST(SeasonRequestTest, CoversTheBedsWithAMargin) {
  const Yard yard = test::YardBuilder()
                        .bed("Front", "POLYGON((2 3, 6 3, 6 5, 2 5, 2 3))")
                        .bed("Back", "POLYGON((10 8, 12 8, 12 9, 10 9, 10 8))")
                        .build();
  const SunMapRequest request = seasonRequest(yard);
  EXPECT_EQ(request.area, (Box{{1, 2}, {13, 10}}));
  EXPECT_EQ(request.cell, Length::centimetres(25));
  EXPECT_FALSE(request.day);
}

TEST(SeasonRequestTest, CoversTheLotToo) {
  Yard yard = test::YardBuilder().bed("Front", "POLYGON((2 3, 6 3, 6 5, 2 5, 2 3))").build();
  LotLine lot;
  lot.id = Id<LotLine>(900);
  lot.outline = rectangle({-4, 0}, {20, 5.5});
  yard.lotLines = yard.lotLines.with(lot);
  EXPECT_EQ(seasonRequest(yard).area, (Box{{-4, 0}, {20, 6}}));
}

TEST(SeasonRequestTest, HugeSitesHaveCoarserCells) {
  const Yard yard =
      test::YardBuilder().bed("Meadow", "POLYGON((0 0, 400 0, 400 400, 0 400, 0 0))").build();
  const SunMapRequest request = seasonRequest(yard);
  EXPECT_EQ(request.cell, Length::metres(1));
}

TEST(SeasonRequestTest, OnHugeLotsOnlyBedsAreAskedFor) {
  std::optional<double> onSmallLot;
  for (const double size : {25.0, 1000.0, 5000.0}) {
    Yard yard = test::YardBuilder().bed("Front", "POLYGON((2 3, 6 3, 6 5, 2 5, 2 3))").build();
    yard.settings.latitude = Angle::degrees(40);
    Building house;
    house.id = Id<Building>(800);
    house.footprint = rectangle({1, -6}, {8, 2});
    house.eave = house.ridge = Length::metres(9);
    yard.buildings = yard.buildings.with(house);
    LotLine lot;
    lot.id = Id<LotLine>(900);
    lot.outline = rectangle({-10, -10}, {size - 10, size - 10});
    yard.lotLines = yard.lotLines.with(lot);
    const SunMapRequest request = seasonRequest(yard);
    EXPECT_EQ(request.cell, Length::centimetres(25)) << size;
    EXPECT_EQ(request.only.empty(), size < 100.0);
    const auto map = computeSunMap(yard, request);
    const double hours = map->meanHours(yard.beds.begin()->outline).value();
    if (!onSmallLot) onSmallLot = hours;
    EXPECT_NEAR(hours, *onSmallLot, 1e-9) << size;
  }
}

TEST(SameSunTest, OnlyWhatCastsShadeMatters) {
  const Yard yard = test::YardBuilder()
                        .bed("Front", "POLYGON((2 3, 6 3, 6 5, 2 5, 2 3))")
                        .building("House", "POLYGON((0 8, 9 8, 9 12, 0 12, 0 8))")
                        .tree("Oak", {9, 3}, 0.4)
                        .build();
  EXPECT_TRUE(sameSun(yard, yard));

  Yard other = yard;
  other.settings.name = "Another name";
  Tree oak = *yard.trees.begin();
  oak.name = "White oak";
  other.trees = other.trees.with(oak);
  Bed bed = *yard.beds.begin();
  bed.moisture = Moisture::Wet;
  other.beds = other.beds.with(bed);
  EXPECT_TRUE(sameSun(yard, other));

  oak.height = Length::metres(11);
  other.trees = other.trees.with(oak);
  EXPECT_FALSE(sameSun(yard, other));
}

TEST(SameSunTest, PlaceSeasonAndAreaMatter) {
  const Yard yard = test::YardBuilder().bed("Front", "POLYGON((2 3, 6 3, 6 5, 2 5, 2 3))").build();
  Yard moved = yard;
  moved.settings.latitude = Angle::degrees(39.4);
  EXPECT_FALSE(sameSun(yard, moved));
  Yard later = yard;
  later.settings.lastFrost = std::chrono::May / 9;
  EXPECT_FALSE(sameSun(yard, later));
  Yard wider = yard;
  Bed bed = *yard.beds.begin();
  bed.outline = rectangle({2, 3}, {9, 5});
  wider.beds = wider.beds.with(bed);
  EXPECT_FALSE(sameSun(yard, wider));
}

}  // namespace
}  // namespace tussock
