// SPDX-License-Identifier: MIT
#include "core/planting/planted_list.h"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/run_check.h"

namespace tussock {
namespace {

using testing::ElementsAre;

bool any(const Drift&) {
  return true;
}

class PlantedShares : public testing::Test {
 protected:
  PlantedShares() { builder_.bed("Bed", test::kSquareBed); }
  void drift(const char* species, int plants) {
    builder_.drift(species, test::row(plants, 0.4, {0.5, 0.5}));
  }
  [[nodiscard]] std::vector<ListedSpecies> shares() const {
    return plantedShares(builder_.build(), builder_.lastBed(), any);
  }
  test::YardBuilder builder_;
};

// 9 + 3, 5 and 3 of 20 plants.
TEST_F(PlantedShares, AreThoseOfTheStandingPlants) {
  drift(test::kBergamot, 9), drift(test::kAster, 5), drift(test::kConeflower, 3);
  drift(test::kBergamot, 3);
  EXPECT_THAT(shares(),
              ElementsAre(ListedSpecies{test::kBergamot, 0.60}, ListedSpecies{test::kAster, 0.25},
                          ListedSpecies{test::kConeflower, 0.15}));
}

// Three thirds are 34, 33 and 33 %: the list would else be said to come to less, or more, than all.
TEST_F(PlantedShares, ComeToTheWhole) {
  drift(test::kBergamot, 5), drift(test::kAster, 5), drift(test::kConeflower, 5);
  double sum = 0.0;
  for (const ListedSpecies& one : shares()) sum += one.share;
  EXPECT_NEAR(sum, 1.0, 1e-9);
}

// A share of nothing would mean that it is left open.
TEST_F(PlantedShares, OfOnePlantAmongThousandsIsOneInAHundred) {
  drift(test::kBergamot, 999), drift(test::kAster, 1);
  EXPECT_THAT(shares(),
              ElementsAre(ListedSpecies{test::kBergamot, 0.99}, ListedSpecies{test::kAster, 0.01}));
}

TEST_F(PlantedShares, OfNothingAreNone) {
  EXPECT_TRUE(shares().empty());
}

// The asters and coneflowers go; another drift of bergamot stays, and the next bed is not looked
// at.
TEST_F(PlantedShares, WhatIsGoneIsCountedBySpecies) {
  drift(test::kBergamot, 5);
  const Yard after = builder_.build();
  drift(test::kAster, 5), drift(test::kAster, 3), drift(test::kConeflower, 3);
  drift(test::kBergamot, 3);
  const Yard before = builder_.build();
  EXPECT_EQ(speciesGone(before, after, builder_.lastBed()), 2U);
  EXPECT_EQ(speciesGone(after, before, builder_.lastBed()), 0U);
}

}  // namespace
}  // namespace tussock
