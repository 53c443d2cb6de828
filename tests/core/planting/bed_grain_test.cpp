// SPDX-License-Identifier: MIT
// Which way a bed runs: plain geometry of circles and rectangles.
#include "core/planting/bed_grain.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/planting/grow.h"
#include "core/planting/measures.h"
#include "tests/core/planting/filled_bed.h"
#include "tests/support/random_beds.h"

namespace tussock {
namespace {

double degreesBetween(Angle a, Angle b) {
  const double turn = std::fmod(std::abs((a - b).degrees()), 180.0);
  return std::min(turn, 180.0 - turn);
}

Bed ringBed() {
  Bed bed;
  bed.id = Id<Bed>(2);
  bed.name = "Ring";
  bed.outline = disc({0, 0}, Length::metres(4), 48);
  bed.outline.holes = {disc({0, 0}, Length::metres(1.2), 32).outer};
  bed.outline = normalised(bed.outline);
  bed.viewing.allRound = true;
  return bed;
}

TEST(BedGrain, RunsRoundAnIslandsHole) {
  const BedGrain grain(ringBed());
  ASSERT_TRUE(grain.bends());
  for (int turn = 0; turn < 360; turn += 15) {
    const Angle angle = Angle::degrees(turn + 3.0);
    const Point p = rotated({2.6, 0.0}, angle);
    EXPECT_LT(degreesBetween(grain.at(p), angle + Angle::degrees(90)), 3.0) << turn;
  }
}

TEST(BedGrain, RunsAlongTheViewingSideOfABroadBedAndAlongANarrowOne) {
  Bed bed;
  bed.viewing = {false, {Angle()}};  // from the north
  bed.outline = rectangle({0, 0}, {8, 4});
  EXPECT_LT(degreesBetween(BedGrain(bed).at({1, 1}), usualAxis(bed) - Angle::degrees(30)), 1e-9);
  bed.outline = rectangle({0, 0}, {1, 9});
  EXPECT_LT(degreesBetween(BedGrain(bed).at({0.5, 4}), Angle::degrees(90)), 1e-6);
  EXPECT_FALSE(BedGrain(bed).bends());
}

// An L whose arms run east and north: along each arm, and through the corner by the shorter way.
TEST(BedGrain, RunsAlongTheArmsOfABentBed) {
  Bed bed;
  bed.viewing = {false, {Angle()}};
  bed.outline = {{{0, 0}, {8, 0}, {8, 2}, {2, 2}, {2, 7}, {0, 7}}, {}};
  const BedGrain grain(bed);
  ASSERT_TRUE(grain.bends());
  EXPECT_LT(degreesBetween(grain.at({5, 1}), Angle()), 6.0);
  EXPECT_LT(degreesBetween(grain.at({7.5, 0.4}), Angle()), 10.0);
  EXPECT_LT(degreesBetween(grain.at({1, 5}), Angle::degrees(90)), 6.0);
  EXPECT_LT(degreesBetween(grain.at({0.7, 0.7}), Angle::degrees(135)), 20.0);
  EXPECT_TRUE(grain.narrow());
  for (Point& p : bed.outline.outer) p = p * 3.0;
  EXPECT_FALSE(BedGrain(bed).narrow());
}

// An L that is hardly one is a block with a corner out of it: it stays straight.
TEST(BedGrain, ABlockHasNoArms) {
  Bed bed;
  bed.viewing = {false, {Angle()}};
  bed.outline = {{{0, 0}, {6, 0}, {6, 3}, {4, 3}, {4, 4}, {0, 4}}, {}};
  EXPECT_FALSE(BedGrain(bed).bends());
}

// A hole in a bed seen from one side does not turn its drifts.
TEST(BedGrain, StaysStraightWhereTheBedIsSeenFromASide) {
  Bed bed = ringBed();
  bed.viewing = {false, {Angle()}};
  EXPECT_FALSE(BedGrain(bed).bends());
}

// 20 to 45 degrees to the run of the bed is asked for; beside that a drift's rectangle tells its
// direction to some ten degrees only.
TEST(BedGrain, DriftsBendRoundATree) {
  const test::RandomBed random = test::randomBed(27);
  ASSERT_EQ(random.shape, test::BedShape::Ring);
  const test::Filled ring = test::filled(random.yard, {});
  EXPECT_EQ(ring.broken(), 0);
  const BedGrain grain(*random.yard.beds.find(random.bed));
  double slanting = 0.0, longOnes = 0.0;
  for (const Drift& drift : ring.after.drifts) {
    const auto shape = rectangleOf(drift);
    if (drift.layer != Layer::Main || !shape || shape->length < 1.8 * shape->width) continue;
    longOnes += 1.0;
    const double off = degreesBetween(shape->axis, grain.at(shape->centre));
    if (off > 8.0 && off < 57.0) slanting += 1.0;
  }
  ASSERT_GE(longOnes, 8.0);
  EXPECT_GE(slanting / longOnes, 0.7);
}

}  // namespace
}  // namespace tussock
