// SPDX-License-Identifier: MIT
#include "core/catalog/growth.h"

#include <array>

#include <gtest/gtest.h>

namespace tussock {
namespace {

constexpr std::array kYears{GrowthYear::First, GrowthYear::Second, GrowthYear::Third,
                            GrowthYear::Mature};

// "Sleep, creep, leap": common practice, from memory.
TEST(Growth, NeverShrinksAndEndsAtTheMatureSpread) {
  for (const auto& [habit, word] : EnumWords<Habit>::values) {
    Species species;
    species.habit = habit;
    species.spread = Length::metres(1.0);
    double before = 0.0;
    for (const GrowthYear year : kYears) {
      const double share = shareOfSpread(species, StockSize::Plug, year);
      EXPECT_GT(share, before) << word;
      before = share;
    }
    EXPECT_EQ(spreadIn(species, StockSize::Plug, GrowthYear::Mature), Length::metres(1.0)) << word;
  }
}

TEST(Growth, ALargerPlantStartsLarger) {
  const Species species;
  EXPECT_LT(shareOfSpread(species, StockSize::Seed, GrowthYear::First),
            shareOfSpread(species, StockSize::Plug, GrowthYear::First));
  EXPECT_LT(shareOfSpread(species, StockSize::Plug, GrowthYear::First),
            shareOfSpread(species, StockSize::Gallon, GrowthYear::First));
}

TEST(Growth, ExistingAndAnnualPlantsAreFullSize) {
  Species species;
  EXPECT_EQ(shareOfSpread(species, StockSize::Existing, GrowthYear::First), 1.0);
  species.lifeSpan = LifeSpan::Annual;
  EXPECT_EQ(shareOfSpread(species, StockSize::Plug, GrowthYear::First), 1.0);
}

TEST(Growth, ShrubsTakeLongerThanForbs) {
  Species shrub, forb;
  shrub.habit = Habit::Shrub;
  EXPECT_LT(shareOfSpread(shrub, StockSize::Gallon, GrowthYear::Third),
            shareOfSpread(forb, StockSize::Gallon, GrowthYear::Third));
}

}  // namespace
}  // namespace tussock
