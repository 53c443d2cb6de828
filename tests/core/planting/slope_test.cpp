// SPDX-License-Identifier: MIT
#include "core/planting/slope.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/geometry/tolerance.h"
#include "core/planting/one_piece.h"
#include "core/planting/totals.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

Settings sloping(double riseOverRun, double aspectDegrees) {
  Settings settings;
  settings.slope = Angle::radians(std::atan(riseOverRun));
  settings.aspect = Angle::degrees(aspectDegrees);
  return settings;
}

// ground area = plan area / cos(slope): a 25 percent slope gives 1.0308, one of 3:1 gives 1.0541
// (identity; to four places). 30 % gives 4 % more and 50 % 12 % more (the same, rounded).
TEST(Slope, MakesTheGroundLargerThanThePlan) {
  EXPECT_NEAR(Slope(sloping(0.25, 90)).stretch(), 1.0308, 1e-4);
  EXPECT_NEAR(Slope(sloping(1.0 / 3.0, 90)).stretch(), 1.0541, 1e-4);
  EXPECT_NEAR(Slope(sloping(0.3, 90)).stretch(), 1.04, 5e-3);
  EXPECT_NEAR(Slope(sloping(0.5, 90)).stretch(), 1.12, 5e-3);
  EXPECT_EQ(Slope(sloping(0.0, 90)).stretch(), 1.0);
}

TEST(Slope, MeasuresLongerDownTheSlopeOnly) {
  const Slope south(sloping(0.75, 180));  // a 3-4-5 triangle: 4 m of plan are 5 m of ground
  EXPECT_NEAR(south.distance({0, 0}, {0, 4}), 5.0, 1e-9);
  EXPECT_NEAR(south.distance({0, 0}, {4, 0}), 4.0, 1e-9);
  const Point p{3.2, -7.1};
  EXPECT_NEAR(distance(south.onPlan(south.onGround(p)), p), 0.0, 1e-12);
}

TEST(Slope, LevelGroundLeavesEveryNumberAsItIs) {
  const Slope level{Settings()};
  const Point p{1.0 / 3.0, 2.0 / 7.0};
  EXPECT_EQ(level.onGround(p), p);
  EXPECT_EQ(level.onPlan(p), p);
}

class AnySlope : public testing::TestWithParam<unsigned> {};

TEST_P(AnySlope, DriftsKeepTheirDistancesAlongTheGround) {
  const test::RandomGround ground = test::randomGround(GetParam());
  Yard yard = ground.yard;
  yard.settings.slope = Angle::degrees(5.0 * (GetParam() % 8));
  yard.settings.aspect = Angle::degrees(40.0 * GetParam());
  const Slope slope(yard.settings);
  for (GrowRequest request : ground.drops) {
    request.pattern = GetParam() % 2 == 0 ? Pattern::Staggered : Pattern::Square;
    const auto places = growDrift(yard, request).places;
    const double share = request.pattern == Pattern::Square ? 1.0 : kLooseSpacing;
    for (std::size_t i = 0; i < places.size(); ++i) {
      EXPECT_TRUE(contains(yard.beds.find(request.bed)->outline, places[i]));
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_TRUE(
            atLeast(Length::metres(slope.distance(places[i], places[j])), share * request.spacing));
    }
  }
}
INSTANTIATE_TEST_SUITE_P(Seeds, AnySlope, testing::Range(0U, 60U));

// A bed takes as many more plants as its surface is larger.
TEST(SlopingBed, TakesPlantsForItsSurface) {
  test::YardBuilder builder;
  builder.bed("Bank", "POLYGON ((0 0, 15 0, 15 15, 0 15, 0 0))");
  Yard yard = builder.build();
  GrowRequest request;
  request.bed = builder.lastBed();
  request.spacing = Length::metres(0.3);
  request.count = kAsManyAsFit;
  request.at = {7, 7};
  const auto level = static_cast<double>(growDrift(yard, request).places.size());
  yard.settings.slope = Angle::radians(std::atan(0.5));
  yard.settings.aspect = Angle::degrees(180);
  const auto bank = static_cast<double>(growDrift(yard, request).places.size());
  EXPECT_NEAR(bank / level, std::sqrt(1.25), 0.02);
  EXPECT_NEAR(totalsOf(yard).ground.squareMetres(), 225.0 * std::sqrt(1.25), 1e-9);
}

}  // namespace
}  // namespace tussock
