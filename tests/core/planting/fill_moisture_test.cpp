// SPDX-License-Identifier: MIT
// The score of moisture: what does not fit the ground it stands in, and neighbours that ask for
// different ground. Ranges are those of the plant facts: Coreopsis lanceolata dry to medium,
// Asclepias incarnata medium to wet, Caltha palustris moist to wet, Dalea purpurea dry to medium.
#include <gtest/gtest.h>

#include "tests/core/planting/filled_bed.h"

namespace tussock {
namespace {

constexpr auto kBed = "POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0))";

// Two drifts side by side.
double moistureScore(Moisture ground, const char* one, const char* other) {
  test::YardBuilder builder;
  builder.bed("Bed", kBed).viewing("S").moisture(ground);
  const Id<Bed> bed = builder.lastBed();
  builder.drift(one, test::row(3, 0.4, {1.0, 1.2})).drift(other, test::row(3, 0.4, {1.0, 1.6}));
  return scoreBed(builder.build(), test::shippedFacts(), nullptr, bed, 0.5)
      .of(FillTerm::Moisture)
      .value_or(-1.0);
}

TEST(MoistureScore, IsFullWhereBothLikeTheGroundAndTheSame) {
  EXPECT_DOUBLE_EQ(moistureScore(Moisture::Medium, "Coreopsis lanceolata", "Dalea purpurea"), 1.0);
}

TEST(MoistureScore, LosesAllOfADriftInGroundItDoesNotLike) {
  EXPECT_DOUBLE_EQ(moistureScore(Moisture::Moist, "Coreopsis lanceolata", "Asclepias incarnata"),
                   0.5 * (0.0 + 0.75));
  EXPECT_DOUBLE_EQ(moistureScore(Moisture::Wet, "Coreopsis lanceolata", "Dalea purpurea"), 0.0);
}

// Both like medium ground; of the narrower range, two classes, the other shares one.
TEST(MoistureScore, LosesSomethingWhereNeighboursAskForDifferentGround) {
  EXPECT_DOUBLE_EQ(moistureScore(Moisture::Medium, "Coreopsis lanceolata", "Asclepias incarnata"),
                   0.75);
  EXPECT_LT(moistureScore(Moisture::Medium, "Coreopsis lanceolata", "Caltha palustris"), 0.75);
}

}  // namespace
}  // namespace tussock
