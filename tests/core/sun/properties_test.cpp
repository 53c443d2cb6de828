// SPDX-License-Identifier: MIT
// What holds of shade whatever stands in the yard.
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/sun/map.h"
#include "core/sun/shade.h"
#include "tests/core/sun/ray_scene.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

constexpr MonthDay kMay{std::chrono::May, std::chrono::day{9}};

double uniform(std::mt19937_64& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

SunPosition randomSun(std::mt19937_64& random) {
  return {Angle::degrees(uniform(random, 0, 360)), Angle::degrees(uniform(random, 12, 80))};
}

SunMapRequest onDay(double cell, int step) {
  SunMapRequest request;
  request.area = {{0, 0}, {16, 12}};
  request.cell = Length::metres(cell);
  request.stepMinutes = step;
  request.day = 2026y / 5 / 9;
  return request;
}

double differenceOf(const SunMap& a, const SunMap& b) {  // the largest
  double most = 0.0;
  for (int row = 0; row < a.rows(); ++row)
    for (int column = 0; column < a.columns(); ++column)
      most = std::max(most, std::abs(a.at(column, row).total() - b.at(column, row).total()));
  return most;
}

class AnyYard : public testing::TestWithParam<unsigned> {
 protected:
  std::mt19937_64 random{GetParam() + 1000};
  test::RayScene scene = test::randomScene(random);
  Yard yard = test::yardOf(scene);
};

Ring turned(Ring ring, Angle by) {
  for (Point& p : ring) p = rotated(p, by);
  return ring;
}

Polygon turned(Polygon polygon, Angle by) {
  polygon.outer = turned(polygon.outer, by);
  for (Ring& hole : polygon.holes) hole = turned(hole, by);
  return polygon;
}

// Everything turned anticlockwise about the origin; azimuths run clockwise.
Yard turned(const Yard& yard, Angle by) {
  Yard result = yard;
  result.settings.aspect = yard.settings.aspect - by;
  for (SkylinePoint& p : result.settings.skyline) p.azimuth = p.azimuth - by;
  for (Building building : yard.buildings) {
    building.footprint = turned(building.footprint, by);
    result.buildings = result.buildings.with(building);
  }
  for (Barrier barrier : yard.barriers) {
    barrier.line = turned(barrier.line, by);
    barrier.footprint = turned(barrier.footprint, by);
    result.barriers = result.barriers.with(barrier);
  }
  for (Tree tree : yard.trees) {
    tree.at = rotated(tree.at, by);
    result.trees = result.trees.with(tree);
  }
  return result;
}

// A crown that is partly buried is told by corners that do not turn with the light, so its edge may
// move by a thousandth of its size.
TEST_P(AnyYard, TurnedWithTheSunHasTheSameShade) {
  const Angle by = Angle::degrees(uniform(random, 5, 355));
  const Yard other = turned(yard, by);
  int differ = 0;
  int shaded = 0;
  for (int sun = 0; sun < 10; ++sun) {
    const SunPosition here = randomSun(random);
    const auto shadows = shadowsOf(solidsOf(yard), here, kMay);
    const auto there = shadowsOf(solidsOf(other), {here.azimuth - by, here.altitude}, kMay);
    for (int i = 0; i < 100; ++i) {
      const Point p{uniform(random, 0, 16), uniform(random, 0, 12)};
      const double share = directShare(shadows, p);
      differ += std::abs(share - directShare(there, rotated(p, by))) > 1e-12;
      shaded += share < 1.0;
    }
  }
  EXPECT_LE(differ, scene.slope > 0.0 ? 3 : 0);
  if (scene.houses.size() + scene.fences.size() + scene.blocks.size() > 1) {
    EXPECT_GT(shaded, 0);
  }
}

TEST_P(AnyYard, AddingASolidNeverAddsSun) {
  yard.settings.latitude = Angle::degrees(42);
  const SunMapRequest request = onDay(0.8, 20);
  const auto without = computeSunMap(yard, request);
  Tree tree;
  tree.id = Id<Tree>(900);
  tree.at = {8, 5};
  yard.trees = yard.trees.with(tree);
  Barrier fence;
  fence.id = Id<Barrier>(901);
  fence.line = {{2, 2}, {9, 8}};
  fence.openness = 0.4;
  yard.barriers = yard.barriers.with(fence);
  const auto with = computeSunMap(yard, request);
  double taken = 0.0;
  for (int row = 0; row < with->rows(); ++row)
    for (int column = 0; column < with->columns(); ++column) {
      const double less = without->at(column, row).total() - with->at(column, row).total();
      EXPECT_GE(less, -1e-5);
      taken += less;
    }
  EXPECT_GT(taken, 0.0);
}

Tree clearTree() {
  Tree tree;
  tree.id = Id<Tree>(900);
  tree.at = {8, 5};
  tree.opennessLeaf = tree.opennessBare = 1.0;
  tree.trunkDiameter = Length();
  return tree;
}

TEST_P(AnyYard, WhatLetsAllThroughIsNotThere) {
  yard.settings.latitude = Angle::degrees(-38);
  const SunMapRequest request = onDay(0.8, 20);
  const auto without = computeSunMap(yard, request);
  yard.trees = yard.trees.with(clearTree());
  Barrier fence;
  fence.id = Id<Barrier>(901);
  fence.line = {{2, 2}, {9, 8}};
  fence.openness = 1.0;
  yard.barriers = yard.barriers.with(fence);
  EXPECT_EQ(differenceOf(*without, *computeSunMap(yard, request)), 0.0);
}

// Leaf dates part the days of a season, but they are counted by the same sun.
TEST_P(AnyYard, ATreeThatLetsAllThroughIsNotThereInAnyMonth) {
  yard.settings.latitude = Angle::degrees(45);
  SunMapRequest request = onDay(2.0, 15);
  request.day.reset();
  request.detail = SunDetail::Months;
  const auto without = computeSunMap(yard, request);
  Tree tree = clearTree();
  tree.leafOn = MonthDay(std::chrono::May, std::chrono::day(5));
  tree.leafOff = MonthDay(std::chrono::September, std::chrono::day(20));
  yard.trees = yard.trees.with(tree);
  const auto with = computeSunMap(yard, request);
  EXPECT_LT(differenceOf(*without, *with), 1e-4);
  for (std::size_t month = 0; month < with->months().size(); ++month)
    with->asked().each([&](int column, int row) {
      EXPECT_NEAR(with->monthAt(month, column, row).total(),
                  without->monthAt(month, column, row).total(), 1e-4);
    });
}

// The sun's own side of a wall, for walls and suns at random, on level ground and on slopes.
TEST_P(AnyYard, FenceShadesNothingOnItsSunwardSide) {
  Yard bare;
  bare.settings.slope = yard.settings.slope;
  bare.settings.aspect = yard.settings.aspect;
  Barrier fence;
  fence.id = Id<Barrier>(2);
  const Point from{uniform(random, 0, 8), uniform(random, 0, 12)};
  const Point to{uniform(random, 9, 16), uniform(random, 0, 12)};
  fence.line = {from, to};
  fence.thickness = Length::metres(0.1);
  fence.height = Length::metres(uniform(random, 0.5, 4));
  bare.barriers = bare.barriers.with(fence);
  const Point along = (to - from) * (1.0 / distance(from, to));
  for (int sun = 0; sun < 20; ++sun) {
    const SunPosition at = randomSun(random);
    const auto shadows = shadowsOf(solidsOf(bare), at, kMay);
    ASSERT_EQ(shadows.size(), 1u);
    const double side = cross(along, directionOf(at.azimuth)) > 0.0 ? 1.0 : -1.0;
    const Point towards = Point{-along.y, along.x} * side;
    for (int i = 0; i < 20; ++i) {
      const Point foot = from + (to - from) * uniform(random, 0, 1);
      EXPECT_EQ(directShare(shadows, foot + towards * uniform(random, 0.051, 20)), 1.0);
    }
    EXPECT_EQ(directShare(shadows, (from + to) * 0.5), 0.0);
  }
}

INSTANTIATE_TEST_SUITE_P(RandomScenes, AnyYard, testing::Range(1u, 31u));

// A block in two parts, the upper on the lower, is the whole block.
TEST(ShadowIdentities, StackedBlocksAreOne) {
  Building whole;
  whole.id = Id<Building>(2);
  whole.footprint = {{{5, 4}, {10, 5}, {9, 8}, {4, 7}}, {}};
  whole.eave = whole.ridge = Length::metres(6);
  Building lower = whole, upper = whole;
  lower.eave = lower.ridge = Length::metres(2.5);
  upper.id = Id<Building>(3);
  upper.base = Length::metres(2.5);
  Yard one, two;
  one.settings.latitude = two.settings.latitude = Angle::degrees(42);
  one.buildings = one.buildings.with(whole);
  two.buildings = two.buildings.with(lower).with(upper);
  EXPECT_LT(differenceOf(*computeSunMap(one, onDay(0.4, 10)), *computeSunMap(two, onDay(0.4, 10))),
            1e-5);
}

// Shadows grow with what throws them: all lengths twice as great, all shade twice as far.
TEST(ShadowIdentities, TwiceTheYardHasTwiceTheShade) {
  std::mt19937_64 random(5);
  Tree small;
  small.id = Id<Tree>(2);
  small.at = {3, 2};
  Tree large = small;
  large.at = small.at * 2.0;
  large.height = small.height * 2.0, large.crownBase = small.crownBase * 2.0;
  large.crownRadius = small.crownRadius * 2.0, large.trunkDiameter = small.trunkDiameter * 2.0;
  Yard one, two;
  one.trees = one.trees.with(small);
  two.trees = two.trees.with(large);
  for (int i = 0; i < 20; ++i) {
    const SunPosition sun = randomSun(random);
    const auto near = shadowsOf(solidsOf(one), sun, kMay);
    const auto far = shadowsOf(solidsOf(two), sun, kMay);
    ASSERT_EQ(near.size(), far.size());
    for (std::size_t k = 0; k < near.size(); ++k)
      EXPECT_NEAR(signedArea(ringOf(far[k].outline)), 4.0 * signedArea(ringOf(near[k].outline)),
                  1e-9);
  }
}

// Mean hours over a bed, with the cell and the step halved again and again.
TEST(ConvergenceTest, HalvingTheCellOrTheStepConverges) {
  std::mt19937_64 random(3);
  test::RayScene scene = test::randomScene(random);
  while (scene.houses.empty() || scene.trees.size() < 2) scene = test::randomScene(random);
  Yard yard = test::yardOf(scene);
  yard.settings.latitude = Angle::degrees(42);
  const Polygon bed = rectangle({2, 2}, {14, 10});
  const auto mean = [&](double cell, int step) {
    return computeSunMap(yard, onDay(cell, step))->meanHours(bed).value();
  };
  const double exact = mean(0.05, 1);
  double cell = 0.8;
  for (const double allowed : {0.3, 0.15, 0.08, 0.04}) {
    EXPECT_LT(std::abs(mean(cell, 1) - exact), allowed) << cell;
    cell /= 2.0;
  }
  int step = 40;
  for (const double allowed : {0.3, 0.15, 0.08, 0.04}) {
    EXPECT_LT(std::abs(mean(0.05, step) - exact), allowed) << step;
    step /= 2;
  }
}

}  // namespace
}  // namespace tussock
