// SPDX-License-Identifier: MIT
#include "core/planting/totals.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::row;
using test::YardBuilder;

Yard twoBeds() {
  return YardBuilder()
      .bed("Walk", "POLYGON((0 0,4 0,4 2,0 2,0 0))")
      .drift("Echinacea purpurea", row(5, 0.4, {0.5, 0.5}))
      .spaced(0.5)
      .drift("Carex pensylvanica", row(3, 0.4, {0.5, 1.5}))
      .layer(Layer::Ground)
      .bed("Gate", "POLYGON((10 0,12 0,12 1,10 1,10 0))")
      .drift("Echinacea purpurea", row(3, 0.4, {10.5, 0.5}))
      .spaced(0.5)
      .build();
}

TEST(Totals, CountPlantsSpeciesAndGroundOverAllBeds) {
  const Totals totals = totalsOf(twoBeds());
  EXPECT_EQ(totals.drifts, 3);
  EXPECT_EQ(totals.plants, 11);
  EXPECT_EQ(totals.species, 2);
  EXPECT_NEAR(totals.ground.squareMetres(), 10.0, 1e-9);
}

// A triangular pattern gives each plant s² √3/2 (hexagonal packing): 0.2165 m² at 0.5 m.
TEST(Totals, GroundTakenIsThatOfTheMainLayer) {
  const Totals totals = totalsOf(twoBeds());
  EXPECT_NEAR(totals.taken.squareMetres(), 8 * 0.216506, 1e-5);
  EXPECT_NEAR(totals.share(), 8 * 0.216506 / 10.0, 1e-5);
}

TEST(Totals, OneBedCountsOnlyItsOwn) {
  const Yard yard = twoBeds();
  const Totals totals = totalsOf(yard, *yard.beds.begin());
  EXPECT_EQ(totals.plants, 8);
  EXPECT_NEAR(totals.ground.squareMetres(), 8.0, 1e-9);
}

TEST(Totals, AnEmptyYardTakesNoGround) {
  EXPECT_EQ(totalsOf(Yard()).share(), 0.0);
}

}  // namespace
}  // namespace tussock
