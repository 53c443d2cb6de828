// SPDX-License-Identifier: MIT
// What a fill plants under and between the main layer.
#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "core/geometry/lattice.h"
#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

using test::Filled;
using test::filledBed;

constexpr auto kOrdinary = "POLYGON ((0 0, 5 0, 5 3, 0 3, 0 0))";

std::map<Layer, int> plantsOf(const Filled& bed) {
  std::map<Layer, int> plants;
  for (const Drift& drift : bed.after.drifts)
    plants[drift.layer] += static_cast<int>(drift.plants.size());
  return plants;
}

// Sedges and bulbs stand under and between the main plants, a trowel's width from each.
TEST(FillLayers, GroundAndBulbsStandUnderAndBetweenTheMainLayer) {
  const Filled bed = filledBed(kOrdinary, {{"Schizachyrium scoparium", 0.3},
                                           {"Monarda fistulosa", 0.3},
                                           {"Carex pensylvanica", 0.2},
                                           {"Dodecatheon meadia", 0.2}});
  EXPECT_EQ(bed.broken(), 0);
  std::vector<Point> main;
  int under = 0;
  for (const Drift& drift : bed.after.drifts)
    if (drift.layer == Layer::Main) {
      for (const Plant& plant : drift.plants) main.push_back(plant.at);
    }
  for (const Drift& drift : bed.after.drifts)
    for (const Plant& plant : drift.plants)
      if (drift.layer != Layer::Main && std::any_of(main.begin(), main.end(), [&](Point p) {
            return distance(p, plant.at) < 0.25;
          }))
        ++under;
  EXPECT_GT(main.size(), 30u);
  EXPECT_GT(under, 20);
}

// Shares are of all plants of the bed: a fifth each of sedges and bulbs, in whole odd drifts.
TEST(FillLayers, GroundAndBulbsHaveTheSharesOfTheList) {
  const Filled bed =
      filledBed("POLYGON ((0 0, 9 0, 9 5, 0 5, 0 0))", {{"Schizachyrium scoparium", 0.3},
                                                        {"Monarda fistulosa", 0.3},
                                                        {"Carex pensylvanica", 0.2},
                                                        {"Dodecatheon meadia", 0.2}});
  std::map<Layer, int> plants = plantsOf(bed);
  const double all = plants[Layer::Main] + plants[Layer::Ground] + plants[Layer::Bulbs];
  EXPECT_NEAR(plants[Layer::Ground] / all, 0.2, 0.04);
  EXPECT_NEAR(plants[Layer::Bulbs] / all, 0.2, 0.04);
}

// Left open they are few, as every plant is paid for: a carpet plant to four of the main layer and
// a bulb to seven (our own judgement), less or more than that by half a drift.
// A carpet plant grows in drifts larger than its share of a small bed: they are cut down to it.
TEST(FillLayers, ASmallShareOfAGroundCoverStaysSmall) {
  for (const char* outline : {"POLYGON ((0 0, 8 0, 8 2, 0 2, 0 0))",
                              "POLYGON ((0 0, 6 0, 6 1.5, 0 1.5, 0 0))", kOrdinary}) {
    const Filled bed = filledBed(outline, {{"Schizachyrium scoparium", 0.30},
                                           {"Sporobolus heterolepis", 0.25},
                                           {"Echinacea purpurea", 0.20},
                                           {"Monarda fistulosa", 0.20},
                                           {"Antennaria plantaginifolia", 0.05}});
    std::map<Layer, int> plants = plantsOf(bed);
    const double all = plants[Layer::Main] + plants[Layer::Ground];
    EXPECT_GT(plants[Layer::Ground], 0);
    EXPECT_NEAR(plants[Layer::Ground] / all, 0.05, 0.03) << outline;
    EXPECT_EQ(bed.broken(), 0);
  }
}

// A lawn of one sedge, with or without a share.
TEST(FillLayers, GroundCoversAloneAreTheMainLayer) {
  for (const double share : {0.0, 1.0}) {
    const Filled bed = filledBed(kOrdinary, {{"Carex pensylvanica", share}});
    double taken = 0.0;
    for (const Drift& drift : bed.after.drifts) {
      EXPECT_EQ(drift.layer, Layer::Main);
      taken +=
          static_cast<double>(drift.plants.size()) * triangularGround(drift.spacing).squareMetres();
    }
    EXPECT_NEAR(taken / 15.0, 0.98, 0.05) << "as full as the handbooks' tables have it";
    EXPECT_EQ(bed.broken(), 0);
  }
}

TEST(FillLayers, GroundAndBulbsLeftOpenAreFew) {
  const Filled bed = filledBed("POLYGON ((0 0, 9 0, 9 5, 0 5, 0 0))");
  std::map<Layer, int> plants = plantsOf(bed);
  std::map<Layer, int> largest;
  for (const Drift& drift : bed.after.drifts)
    largest[drift.layer] = std::max(largest[drift.layer], static_cast<int>(drift.plants.size()));
  EXPECT_GT(plants[Layer::Ground], 0);
  EXPECT_GT(plants[Layer::Bulbs], 0);
  EXPECT_LE(plants[Layer::Ground], plants[Layer::Main] / 4 + largest[Layer::Ground]);
  EXPECT_LE(plants[Layer::Bulbs], plants[Layer::Main] / 7 + largest[Layer::Bulbs]);
}

// A list of the fill's own has plants for every layer, and breaks no rule with them.
TEST(FillLayers, AProposedListHasGroundCoversAndBulbs) {
  const Filled bed = filledBed(kOrdinary);
  ASSERT_TRUE(bed.result.proposed);
  std::map<Layer, int> plants = plantsOf(bed);
  EXPECT_GT(plants[Layer::Main], 30);
  EXPECT_GT(plants[Layer::Ground], 0);
  EXPECT_GT(plants[Layer::Bulbs], 0);
  EXPECT_EQ(bed.broken(), 0);
}

// Matrix planting: one species between the drifts of the others. 40 % is asked for.
TEST(FillLayers, AMatrixPlantFillsWhatTheDriftsLeave) {
  const Filled bed =
      filledBed("POLYGON ((0 0, 8 0, 8 4, 0 4, 0 0))", {{"Schizachyrium scoparium", 0.4, true},
                                                        {"Monarda fistulosa", 0.0},
                                                        {"Echinacea purpurea", 0.0},
                                                        {"Symphyotrichum laeve", 0.0},
                                                        {"Zizia aurea", 0.0}});
  EXPECT_EQ(bed.broken(), 0);
  int matrices = 0, matrix = 0, all = 0;
  double ground = 0.0;
  for (const Drift& drift : bed.after.drifts) {
    const int count = static_cast<int>(drift.plants.size());
    all += count;
    ground += count * triangularGround(drift.spacing).squareMetres();
    if (drift.pattern != Pattern::Matrix) {
      EXPECT_NE(drift.species, "Schizachyrium scoparium");
      continue;
    }
    EXPECT_EQ(drift.species, "Schizachyrium scoparium");
    ++matrices, matrix += count;
  }
  EXPECT_EQ(matrices, 1);
  EXPECT_NEAR(static_cast<double>(matrix) / all, 0.4, 0.08);
  EXPECT_GT(ground, 0.92 * 32.0);  // all that the drifts leave
}

}  // namespace
}  // namespace tussock
