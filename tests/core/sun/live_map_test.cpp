// SPDX-License-Identifier: MIT
// A map that follows edits is the map computed whole, to the last bit.
#include "core/sun/live_map.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/sun/month_map.h"
#include "tests/core/sun/ray_scene.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

void expectSame(const SunMap& a, const SunMap& b) {
  ASSERT_EQ(a.rows(), b.rows());
  ASSERT_EQ(a.columns(), b.columns());
  for (int row = 0; row < a.rows(); ++row)
    for (int column = 0; column < a.columns(); ++column) {
      ASSERT_EQ(a.known(column, row), b.known(column, row));
      if (!a.known(column, row)) continue;
      ASSERT_EQ(a.at(column, row).beforeNoon, b.at(column, row).beforeNoon) << column << ' ' << row;
      ASSERT_EQ(a.at(column, row).afterNoon, b.at(column, row).afterNoon) << column << ' ' << row;
      ASSERT_EQ(a.underBuilding(column, row), b.underBuilding(column, row));
    }
}

void expectSameMonths(const SunMap& a, const SunMap& b) {
  ASSERT_FALSE(a.months().empty());
  ASSERT_EQ(a.months(), b.months());
  for (std::size_t month = 0; month < a.months().size(); ++month)
    expectSame(monthMapOf(a, a.months()[month]), monthMapOf(b, b.months()[month]));
}

SunMapRequest small() {
  SunMapRequest request;
  request.area = {{0, 0}, {16, 12}};
  request.cell = Length::metres(0.5);
  request.stepMinutes = 30;
  return request;
}

class Following : public testing::TestWithParam<unsigned> {
 protected:
  std::mt19937_64 random{GetParam()};
  Yard yard = test::yardOf(test::randomScene(random));

  double uniform(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  }
  // Moves, raises or widens one thing.
  void changeOne() {
    const int kind = std::uniform_int_distribution<int>(0, 2)(random);
    if (kind == 0 && yard.trees.size() > 0) {
      Tree tree = *yard.trees.begin();
      tree.at += {uniform(-2, 2), uniform(-2, 2)};
      tree.height = tree.height * uniform(1.0, 1.3);
      tree.crownRadius = tree.crownRadius * uniform(0.8, 1.2);
      yard.trees = yard.trees.with(tree);
    } else if (kind == 1 && yard.buildings.size() > 0) {
      Building building = *yard.buildings.begin();
      building.footprint = moved(building.footprint, {uniform(-1, 1), uniform(-1, 1)});
      building.eave = building.eave + Length::metres(0.2);
      building.ridge = building.ridge + Length::metres(0.2);
      yard.buildings = yard.buildings.with(building);
    } else if (yard.barriers.size() > 0) {
      Barrier barrier = *yard.barriers.begin();
      barrier.height = Length::metres(uniform(0.8, 3.0));
      yard.barriers = yard.barriers.with(barrier);
    }
  }
};

TEST_P(Following, EqualsTheWholeMapAfterEachChange) {
  yard.settings.latitude = Angle::degrees(uniform(-55, 65));
  yard.settings.slope = Angle::degrees(uniform(0, 8));
  yard.settings.aspect = Angle::degrees(uniform(0, 360));
  LiveSunMap live(small());
  for (int edit = 0; edit < 4; ++edit) {
    const auto followed = live.update(yard);
    const auto whole = computeSunMap(yard, small());
    ASSERT_TRUE(followed && whole);
    EXPECT_EQ(live.lastWork() == LiveSunMap::Work::Whole, edit == 0);
    expectSame(*followed, *whole);
    changeOne();
  }
}

// Two beds in the same rows and one that shares some with them.
TEST_P(Following, EqualsTheWholeMapUnderBedsAlone) {
  SunMapRequest beds = small();
  beds.only = {rectangle({1, 2}, {4, 5}), rectangle({9, 2}, {14, 6}), rectangle({6, 4}, {7, 11})};
  LiveSunMap live(beds);
  for (int edit = 0; edit < 2; ++edit) {
    const auto followed = live.update(yard);
    const auto alone = computeSunMap(yard, beds);
    const auto whole = computeSunMap(yard, small());
    ASSERT_TRUE(followed && alone && whole);
    EXPECT_LT(alone->asked().cells(), whole->asked().cells() / 3);
    expectSame(*followed, *alone);
    int known = 0;
    for (int row = 0; row < whole->rows(); ++row)
      for (int column = 0; column < whole->columns(); ++column) {
        if (!alone->known(column, row)) continue;
        ++known;
        ASSERT_EQ(alone->at(column, row).total(), whole->at(column, row).total());
      }
    EXPECT_EQ(known, 4 * (3 * 3 + 5 * 4 + 1 * 7));
    changeOne();
  }
}

TEST_P(Following, KeepsTheMonthsToo) {
  yard.settings.latitude = Angle::degrees(uniform(-55, 65));
  SunMapRequest request = small();
  request.detail = SunDetail::Months;
  LiveSunMap live(request);
  for (int edit = 0; edit < 3; ++edit) {
    const auto followed = live.update(yard);
    const auto whole = computeSunMap(yard, request);
    ASSERT_TRUE(followed && whole);
    EXPECT_EQ(live.lastWork() == LiveSunMap::Work::Whole, edit == 0);
    expectSame(*followed, *whole);
    expectSameMonths(*followed, *whole);
    changeOne();
  }
}

INSTANTIATE_TEST_SUITE_P(RandomScenes, Following, testing::Range(1u, 31u));

struct LiveYard : testing::Test {
  std::mt19937_64 random{5};
  Yard yard = test::yardOf(test::randomScene(random));
  LiveSunMap live{small()};

  LiveYard() {
    Tree tree;
    tree.id = Id<Tree>(800);
    tree.at = {8, 4};
    yard.trees = yard.trees.with(tree);
    yard.settings.latitude = Angle::degrees(45);
    (void)live.update(yard);
  }
  void expectWholeAndSame() {
    const auto followed = live.update(yard);
    EXPECT_EQ(live.lastWork(), LiveSunMap::Work::Whole);
    expectSame(*followed, *computeSunMap(yard, small()));
  }
};

TEST_F(LiveYard, ANewSolidIsComputedWhole) {
  Tree tree;
  tree.id = Id<Tree>(900);
  tree.at = {4, 4};
  yard.trees = yard.trees.with(tree);
  expectWholeAndSame();
}

TEST_F(LiveYard, OtherLeafDatesAreComputedWhole) {
  Tree tree = *yard.trees.find(Id<Tree>(800));
  tree.leafOn = std::chrono::June / 20;
  yard.trees = yard.trees.with(tree);
  expectWholeAndSame();
}

TEST_F(LiveYard, AnotherPlaceOrSkylineIsComputedWhole) {
  yard.settings.latitude = Angle::degrees(30);
  expectWholeAndSame();
  yard.settings.skyline = {{Angle::degrees(90), Angle::degrees(15)}};
  expectWholeAndSame();
}

TEST_F(LiveYard, WhatCastsNoShadeChangesNothing) {
  const auto before = live.update(yard);
  yard.settings.name = "Another name";
  const auto after = live.update(yard);
  EXPECT_EQ(live.lastWork(), LiveSunMap::Work::ChangedSolids);
  expectSame(*before, *after);
}

TEST_F(LiveYard, StoppedHalfwayItStartsAgain) {
  Tree tree = *yard.trees.find(Id<Tree>(800));
  tree.at = {3, 3};
  yard.trees = yard.trees.with(tree);
  std::stop_source source;
  source.request_stop();
  EXPECT_FALSE(live.update(yard, source.get_token()));
  expectWholeAndSame();
}

TEST(PreviewTest, CoversTheSameGroundMoreCoarsely) {
  Yard yard;
  Bed bed;
  bed.id = Id<Bed>(2);
  bed.outline = rectangle({0, 0}, {10, 4});
  yard.beds = yard.beds.with(bed);
  EXPECT_EQ(previewRequest(yard).area, seasonRequest(yard).area);
  EXPECT_EQ(previewRequest(yard).stepMinutes, 15);
  EXPECT_EQ(previewRequest(yard).detail, SunDetail::Season);
}

// What it gives up for speed, beside steps of two minutes in bands of one degree. Hours are told in
// tenths: it is off by less than half of one in the mean, and by two at worst.
TEST(PreviewTest, IsNearTheMapInFineSteps) {
  Yard yard;
  yard.settings.latitude = Angle::degrees(40);
  Building house;
  house.id = Id<Building>(2);
  house.footprint = rectangle({4, 8}, {14, 15});
  house.eave = Length::metres(3), house.ridge = Length::metres(6);
  yard.buildings = yard.buildings.with(house);
  for (const Point at : {Point{3, 3}, {17, 5}, {20, 17}}) {
    Tree tree;
    tree.id = Id<Tree>(10 + static_cast<std::int64_t>(at.x));
    tree.at = at;
    tree.height = Length::metres(8), tree.crownRadius = Length::metres(2.5);
    yard.trees = yard.trees.with(tree);
  }
  SunMapRequest request = previewRequest(yard);
  request.area = {{0, 0}, {24, 20}};
  const auto quick = computeSunMap(yard, request);
  request.stepMinutes = 2;
  const auto fine = computeSunMap(yard, request);
  double sum = 0.0, most = 0.0;
  int cells = 0;
  for (int row = 0; row < fine->rows(); ++row)
    for (int column = 0; column < fine->columns(); ++column) {
      const double off = std::abs(quick->at(column, row).total() - fine->at(column, row).total());
      sum += off, ++cells;
      most = std::max(most, off);
    }
  EXPECT_LT(sum / cells, 0.05);
  EXPECT_LT(most, 0.2);
}

}  // namespace
}  // namespace tussock
