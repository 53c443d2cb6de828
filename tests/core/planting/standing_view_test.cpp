// SPDX-License-Identifier: MIT
#include "core/planting/standing_view.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::YardBuilder;

// A bed 4 m wide and 2 m deep with one plant in its south-west and one in its north-east.
Yard twoPlants(std::string_view viewing) {
  return YardBuilder()
      .bed("Walk", "POLYGON((10 5,14 5,14 7,10 7,10 5))")
      .viewing(viewing)
      .drift("Echinacea purpurea", {{10.5, 5.25}})
      .drift("Panicum virgatum", {{13, 6.5}})
      .build();
}
StandingView seen(std::string_view viewing) {
  const Yard yard = twoPlants(viewing);
  return standingView(yard, *yard.beds.begin());
}

TEST(StandingView, FromTheSouthWestIsLeftAndNorthIsBehind) {
  const StandingView view = seen("S");
  EXPECT_NEAR(view.width, 4.0, 1e-9);
  EXPECT_NEAR(view.depth, 2.0, 1e-9);
  ASSERT_EQ(view.plants.size(), 2u);
  EXPECT_NEAR(view.plants[0].across, 3.0, 1e-9);
  EXPECT_NEAR(view.plants[0].depth, 1.5, 1e-9);
  EXPECT_NEAR(view.plants[1].across, 0.5, 1e-9);
  EXPECT_NEAR(view.plants[1].depth, 0.25, 1e-9);
}

TEST(StandingView, FromTheNorthEverythingIsTurnedRound) {
  const StandingView view = seen("N");
  ASSERT_EQ(view.plants.size(), 2u);
  EXPECT_NEAR(view.plants[0].across, 3.5, 1e-9) << "the south-west plant is far and to the right";
  EXPECT_NEAR(view.plants[0].depth, 1.75, 1e-9);
}

TEST(StandingView, FromTheEastSouthIsLeft) {
  const StandingView view = seen("E");
  EXPECT_NEAR(view.width, 2.0, 1e-9);
  EXPECT_NEAR(view.depth, 4.0, 1e-9);
  EXPECT_NEAR(view.plants[0].across, 0.25, 1e-9);
  EXPECT_NEAR(view.plants[0].depth, 3.5, 1e-9);
}

TEST(StandingView, TheFirstSideCountsAndAnIslandIsSeenFromTheSouth) {
  EXPECT_NEAR(seen("W;S").from.degrees(), 270.0, 1e-9);
  EXPECT_NEAR(seen("all").from.degrees(), 180.0, 1e-9);
  EXPECT_NEAR(seen("").from.degrees(), 180.0, 1e-9);
}

TEST(StandingView, OnlyTheBedsOwnPlantsStandInIt) {
  Yard yard = twoPlants("S");
  Bed other;
  other.id = Id<Bed>(900);
  other.outline = rectangle({0, 0}, {1, 1});
  EXPECT_TRUE(standingView(yard, other).plants.empty());
}

}  // namespace
}  // namespace tussock
