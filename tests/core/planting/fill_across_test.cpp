// SPDX-License-Identifier: MIT
// Beds looked at from opposite sides and from all four: the tallest plants stand in the middle, as
// in an island bed (Horticulture, Placing plants by height), and they fill as any other bed does.
// The figures are those of docs/methods-planting.md.
#include <gtest/gtest.h>

#include "core/checks/registry.h"
#include "core/planting/measures.h"
#include "tests/core/planting/filled_bed.h"
#include "tests/support/random_beds.h"

namespace tussock {
namespace {

void expectFilledAndInOrder(const test::Filled& filled, Id<Bed> bed) {
  const BedMeasures measures = measure(filled.after, bed);
  EXPECT_EQ(filled.broken(), 0);
  EXPECT_GE(measures.groundTaken, 0.93);
  EXPECT_LE(measures.groundTaken, 1.03);
  EXPECT_GE(measures.covered, 0.99);
  // 0.80 on average; cells planted at random come to 0.59, and one bed is luckier than another.
  EXPECT_GE(filled.result.score.of(FillTerm::Height).value_or(0.0), 0.65);
  for (const Finding& finding :
       runChecks({filled.after, filled.facts, nullptr}).value_or(std::vector<Finding>()))
    ADD_FAILURE() << wordOf(finding.check) << " " << finding.about << " " << finding.measured;
}

// Mean height in metres of the plants whose northing is in a part of the bed.
double meanHeight(const test::Filled& filled, double from, double to) {
  double sum = 0.0, count = 0.0;
  for (const Drift& drift : filled.after.drifts) {
    const Species* species = filled.facts.find(drift.species);
    if (drift.layer != Layer::Main || species == nullptr) continue;
    for (const Plant& plant : drift.plants)
      if (plant.at.y >= from && plant.at.y < to) sum += species->height().metres(), count += 1.0;
  }
  return count > 0.0 ? sum / count : 0.0;
}

TEST(FillAcross, RisesFromBothSidesToTheMiddle) {
  test::YardBuilder builder;
  builder.bed("Walk", "POLYGON ((0 0, 8 0, 8 5, 0 5, 0 0))").viewing("N;S");
  const test::Filled walk = test::filled(builder.build(), {});
  expectFilledAndInOrder(walk, builder.lastBed());
  const double south = meanHeight(walk, 0.0, 1.5), north = meanHeight(walk, 3.5, 5.0);
  const double middle = meanHeight(walk, 1.8, 3.2);
  EXPECT_GT(middle, 1.25 * south);
  EXPECT_GT(middle, 1.25 * north);
}

class FillAcross : public testing::TestWithParam<const char*> {};

TEST_P(FillAcross, OfARectangleIsFullAndInOrder) {
  test::YardBuilder builder;
  builder.bed("Walk", "POLYGON ((0 0, 8 0, 8 5, 0 5, 0 0))").viewing(GetParam());
  expectFilledAndInOrder(test::filled(builder.build(), {}), builder.lastBed());
}
INSTANTIATE_TEST_SUITE_P(Sides, FillAcross, testing::Values("E;W", "N;E;S;W", "NE;SW"));

class FillAcrossRandom : public testing::TestWithParam<unsigned> {};

TEST_P(FillAcrossRandom, IsFullAndInOrder) {
  const test::RandomBed random = test::randomBedSeenAcross(GetParam());
  expectFilledAndInOrder(test::filled(random.yard, {}), random.bed);
}
INSTANTIATE_TEST_SUITE_P(Beds, FillAcrossRandom, testing::Values(6u, 8u, 13u, 14u, 23u));

}  // namespace
}  // namespace tussock
