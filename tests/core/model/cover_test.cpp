// SPDX-License-Identifier: MIT
#include "core/model/cover.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

TEST(CoverAt, RoofsOnTheGroundAndTrunksCoverIt) {
  Yard yard = test::YardBuilder()
                  .building("House", "POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))")
                  .tree("Oak", {8.0, 1.0}, 0.6)
                  .build();
  EXPECT_EQ(coverAt(yard, {2.0, 1.0}), Cover::Roof);
  EXPECT_EQ(coverAt(yard, {5.0, 1.0}), Cover::Open);
  EXPECT_EQ(coverAt(yard, {8.29, 1.0}), Cover::Trunk);
  EXPECT_EQ(coverAt(yard, {8.31, 1.0}), Cover::Open) << "beyond half the diameter";
  Building house = *yard.buildings.begin();
  house.base = Length::metres(2.2);
  house.eave = Length::metres(3);
  yard.buildings = yard.buildings.with(house);
  EXPECT_EQ(coverAt(yard, {2.0, 1.0}), Cover::Open) << "on posts";
}

}  // namespace
}  // namespace tussock
