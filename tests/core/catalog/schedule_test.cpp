// SPDX-License-Identifier: MIT
#include "core/catalog/schedule.h"

#include <gtest/gtest.h>

#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

Yard twoBeds() {
  Yard yard = test::YardBuilder()
                  .bed("A", "POLYGON((0 0,4 0,4 4,0 4,0 0))")
                  .drift("Monarda fistulosa", test::row(3, 0.4, {0.5, 0.5}))
                  .drift("Aster one", test::row(5, 0.3, {0.5, 1.5}))
                  .drift("Empty plant", {})
                  .bed("B", "POLYGON((5 0,9 0,9 4,5 4,5 0))")
                  .drift("Monarda fistulosa", test::row(7, 0.5, {5.5, 0.5}))
                  .spaced(0.5)
                  .drift("Monarda fistulosa", test::row(1, 0.5, {5.5, 3.5}))
                  .existing()
                  .build();
  yard.planCodes = yard.planCodes.with({Id<PlanCode>(900), "Monarda fistulosa", "MONFIS"});
  return yard;
}

TEST(Schedule, SumsDriftsOfASpeciesAndKeepsExistingApart) {
  const auto lines = scheduleOf(twoBeds(), Catalogue());
  ASSERT_EQ(lines.size(), 3u);
  EXPECT_EQ(lines[0].botanicalName, "Aster one");
  EXPECT_EQ(lines[0].code, "");
  const ScheduleLine& bought = lines[1];
  EXPECT_EQ(bought.code, "MONFIS");
  EXPECT_EQ(bought.quantity, 10);
  EXPECT_EQ(bought.drifts, 2);
  EXPECT_EQ(bought.closest, Length::metres(0.4));
  EXPECT_EQ(bought.widest, Length::metres(0.5));
  EXPECT_EQ(lines[2].size, StockSize::Existing);
  EXPECT_EQ(lines[2].quantity, 1);
}

TEST(Schedule, WhatIsToBePlantedIsSummedApartFromWhatStandsThere) {
  EXPECT_EQ(sumsOf(scheduleOf(twoBeds(), Catalogue())), (PlantSums{15, 1}));
}

TEST(Schedule, BedsAddUpToTheYard) {
  const Yard yard = twoBeds();
  int inBeds = 0, inYard = 0;
  for (const Bed& bed : yard.beds)
    for (const ScheduleLine& line : scheduleOf(yard, Catalogue(), bed.id)) inBeds += line.quantity;
  for (const ScheduleLine& line : scheduleOf(yard, Catalogue())) inYard += line.quantity;
  EXPECT_EQ(inBeds, 16);
  EXPECT_EQ(inYard, 16);
}

}  // namespace
}  // namespace tussock
