// SPDX-License-Identifier: MIT
// The score of repetition: how evenly the drifts of a species that comes again are apart (common
// practice), and that a bed where none does is not praised for it.
#include <optional>

#include <gtest/gtest.h>

#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

constexpr auto kWalk = "POLYGON ((0 0, 4 0, 4 5, 0 5, 0 0))";
constexpr const char* kSpecies[] = {"Coreopsis lanceolata", "Dalea purpurea", "Liatris aspera",
                                    "Allium cernuum"};

// Rows of nine, half a metre apart, of these species.
std::optional<double> repetition(const std::vector<int>& species, double wildness = 0.5) {
  test::YardBuilder builder;
  builder.bed("Walk", kWalk).viewing("S");
  const Id<Bed> bed = builder.lastBed();
  double north = 0.5;
  for (const int one : species) {
    builder.drift(kSpecies[static_cast<std::size_t>(one)], test::row(9, 0.4, {0.4, north}));
    north += 0.5;
  }
  return scoreBed(builder.build(), test::shippedFacts(), nullptr, bed, wildness)
      .of(FillTerm::Repetition);
}

TEST(RepetitionScore, SaysNothingWhereNoSpeciesComesAgain) {
  EXPECT_FALSE(repetition({0, 1, 2, 3}));
  EXPECT_TRUE(repetition({0, 1, 2, 0}));
}

TEST(RepetitionScore, IsFullWhereDriftsOfASpeciesAreFarApart) {
  EXPECT_DOUBLE_EQ(repetition({0, 1, 2, 3, 0, 1, 2, 3}).value_or(0.0), 1.0);
}

TEST(RepetitionScore, FallsWhereTheyCrowd) {
  const double even = repetition({0, 1, 2, 0, 1, 2, 0, 3}).value_or(0.0);
  const double crowded = repetition({0, 0, 0, 1, 2, 1, 2, 3}).value_or(1.0);
  EXPECT_LT(crowded, 0.8);
  EXPECT_GT(even, crowded + 0.1);
}

}  // namespace
}  // namespace tussock
