// SPDX-License-Identifier: MIT
// 1 rules that hold on any ground  2 figure of a drift  3 counts and axis  4 beds and edge cases
#include "core/planting/grow.h"

#include <algorithm>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/overlay.h"
#include "core/geometry/tolerance.h"
#include "core/planting/one_piece.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::YardBuilder;

GrowRequest requestIn(const YardBuilder& builder, Point at, int count, double spacing = 0.4) {
  GrowRequest request;
  request.bed = builder.lastBed();
  request.at = at;
  request.count = count;
  request.spacing = Length::metres(spacing);
  return request;
}

// 1 Rules

class AnyGround : public testing::TestWithParam<unsigned> {};

void expectInside(const Yard& yard, const GrowRequest& request, Point p) {
  const Bed& bed = *yard.beds.find(request.bed);
  const double keep =
      std::max(bed.setback.value_or(Length()), request.spacing / 2.0).metres() - 1e-6;
  EXPECT_TRUE(contains(bed.outline, p));
  EXPECT_GE(distanceToEdge(bed.outline, p), keep);
  for (const Paving& paving : yard.pavings) EXPECT_FALSE(contains(paving.outline, p));
  for (const Tree& tree : yard.trees)
    EXPECT_GT(distance(tree.at, p), tree.trunkDiameter.metres() / 2.0);
  for (const SteppingPlace& step : yard.steppingPlaces)
    EXPECT_GT(distance(step.at, p), step.radius.metres());
  for (const Barrier& wall : yard.barriers)
    EXPECT_GT(distanceToSegment(p, wall.line[0], wall.line[1]), wall.thickness.metres() / 2.0);
}

void expectClear(const Yard& yard, const GrowRequest& request, Point p) {
  for (const Drift& drift : yard.drifts) {
    const Length least = drift.layer == request.layer
                             ? kLooseSpacing * (drift.spacing + request.spacing) / 2.0
                             : kBetweenLayers;
    for (const Plant& plant : drift.plants)
      EXPECT_TRUE(atLeast(Length::metres(distance(plant.at, p)), least));
  }
}

TEST_P(AnyGround, EveryDriftKeepsTheRules) {
  const test::RandomGround ground = test::randomGround(GetParam());
  SCOPED_TRACE(testing::Message() << "seed " << GetParam());
  Yard yard = ground.yard;
  IdSource ids(1000);
  for (const GrowRequest& request : ground.drops) {
    const Growth growth = growDrift(yard, request);
    const auto& places = growth.places;
    EXPECT_LE(static_cast<int>(places.size()), request.count);
    if (places.empty()) continue;
    EXPECT_EQ(places.size() % 2, 1U);
    EXPECT_TRUE(inOnePiece(places, request.spacing));
    for (std::size_t i = 0; i < places.size(); ++i) {
      expectInside(yard, request, places[i]);
      expectClear(yard, request, places[i]);
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_TRUE(atLeast(Length::metres(distance(places[i], places[j])),
                            kLooseSpacing * request.spacing));
    }
    yard = test::withDrift(yard, request, places, ids);
  }
}

TEST_P(AnyGround, TheSameDropGivesTheSameDrift) {
  const test::RandomGround ground = test::randomGround(GetParam());
  const GrowRequest& request = ground.drops.front();
  EXPECT_EQ(growDrift(ground.yard, request).places, growDrift(ground.yard, request).places);
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyGround, testing::Range(0U, 240U));

TEST(RandomGrounds, MostDropsFindRoom) {  // else the rules above were tested on nothing
  std::size_t grown = 0;
  for (unsigned seed = 0; seed < 40; ++seed) {
    const test::RandomGround ground = test::randomGround(seed);
    for (const GrowRequest& request : ground.drops)
      grown += growDrift(ground.yard, request).places.empty() ? 0U : 1U;
  }
  EXPECT_GT(grown, 150U);  // of 200
}

// 2 Figure

class OpenGround : public testing::TestWithParam<int> {};

TEST_P(OpenGround, ADriftIsTwoAndAHalfToFiveTimesAsLongAsWide) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 40 0, 40 40, 0 40, 0 0))").viewing("S");
  const Growth growth = growDrift(builder.build(), requestIn(builder, {18.3, 21.7}, GetParam()));
  ASSERT_EQ(std::ssize(growth.places), growth.asked);
  const auto box = smallestRectangle(growth.places, Length::metres(0.2));
  EXPECT_GE(box.length / box.width, 2.5);
  EXPECT_LE(box.length / box.width, 5.0);
}

INSTANTIATE_TEST_SUITE_P(Counts, OpenGround, testing::Values(5, 7, 9, 11, 13, 15, 21, 31, 51));

class ManyPlants : public testing::TestWithParam<int> {};

TEST_P(ManyPlants, LieAlongTheAxis) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 40 0, 40 40, 0 40, 0 0))");
  GrowRequest request = requestIn(builder, {18.3, 21.7}, GetParam());
  request.axis = Angle::degrees(70);
  const Growth growth = growDrift(builder.build(), request);
  const auto box = smallestRectangle(growth.places, Length::metres(0.2));
  EXPECT_NEAR(box.axis.degrees(), 70.0, 20.0);
}

INSTANTIATE_TEST_SUITE_P(Counts, ManyPlants, testing::Values(9, 11, 13, 15, 21, 31, 51));

TEST(GrowDrift, BeginsWhereItIsDropped) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 40 0, 40 40, 0 40, 0 0))");
  const Growth growth = growDrift(builder.build(), requestIn(builder, {12.0, 20.0}, 13));
  Point middle;
  for (const Point p : growth.places) middle += p * (1.0 / 13.0);
  EXPECT_LT(distance(middle, {12.0, 20.0}), 0.4);
}

TEST(GrowDrift, ClosesUpWithANeighbourOfAnotherSpacing) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 20 0, 20 20, 0 20, 0 0))").viewing("S");
  builder.drift("Carex", test::row(21, 0.6, {4.0, 10.0})).spaced(0.6);
  GrowRequest request = requestIn(builder, {10.0, 10.7}, 13);
  request.axis = Angle();
  const Yard yard = builder.build();
  const Growth growth = growDrift(yard, request);
  ASSERT_EQ(std::ssize(growth.places), growth.asked);
  double nearest = 1e9;
  for (const Point p : growth.places)
    for (const Point q : positionsOf(*yard.drifts.begin()))
      nearest = std::min(nearest, distance(p, q));
  EXPECT_LT(nearest, 0.5);  // their mean spacing: no half-gap is left
}

// 3 Counts and axis

TEST(GrowDrift, TakesAnEvenCountAsTheOddBelowUnlessAsked) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0))");
  EXPECT_EQ(growDrift(builder.build(), requestIn(builder, {4, 4}, 8)).places.size(), 7U);
  EXPECT_EQ(growDrift(builder.build(), requestIn(builder, {4, 4}, 0)).places.size(), 1U);
  GrowRequest asked = requestIn(builder, {4, 4}, 8);
  asked.countAs = CountAs::Asked;
  EXPECT_EQ(growDrift(builder.build(), asked).places.size(), 8U);
}

TEST(GrowDrift, GivesTheLargestOddNumberThatFits) {
  YardBuilder builder;  // room for four in a line: a set-back of 0.2 leaves 1.25 by 0.02 m
  builder.bed("Slot", "POLYGON ((0 0, 1.65 0, 1.65 0.42, 0 0.42, 0 0))");
  const Growth growth = growDrift(builder.build(), requestIn(builder, {0.2, 0.2}, 9));
  EXPECT_EQ(growth.places.size(), 3U);
  EXPECT_EQ(growth.asked, 9);
}

TEST(UsualAxis, LeansThirtyDegreesFromTheViewingSide) {
  YardBuilder builder;
  builder.bed("South", "POLYGON ((0 0, 9 0, 9 3, 0 3, 0 0))").viewing("S");
  EXPECT_NEAR(usualAxis(*builder.build().beds.begin()).degrees(), 30.0, 1e-9);
  YardBuilder east;
  east.bed("East", "POLYGON ((0 0, 9 0, 9 3, 0 3, 0 0))").viewing("E");
  EXPECT_NEAR(usualAxis(*east.build().beds.begin()).degrees(), 120.0, 1e-9);
  YardBuilder island;
  island.bed("Island", "POLYGON ((0 0, 3 0, 3 9, 0 9, 0 0))").viewing("all");
  EXPECT_NEAR(usualAxis(*island.build().beds.begin()).degrees(), 120.0, 1e-9);
}

// 4 Beds and edge cases

TEST(BedAt, TakesTheSmallestOfOverlappingBeds) {
  YardBuilder builder;
  builder.bed("Large", "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0))");
  builder.bed("Small", "POLYGON ((3 3, 5 3, 5 5, 3 5, 3 3))");
  const Yard yard = builder.build();
  ASSERT_NE(bedAt(yard, {4, 4}), nullptr);
  EXPECT_EQ(bedAt(yard, {4, 4})->name, "Small");
  EXPECT_EQ(bedAt(yard, {1, 1})->name, "Large");
  EXPECT_EQ(bedAt(yard, {20, 1}), nullptr);
}

TEST(GrowDrift, FindsNothingInABedThatIsTooNarrow) {
  YardBuilder builder;
  builder.bed("Crack", "POLYGON ((0 0, 9 0, 9 0.3, 0 0.3, 0 0))");
  EXPECT_TRUE(growDrift(builder.build(), requestIn(builder, {4, 0.15}, 5)).places.empty());
}

TEST(GrowDrift, FindsNothingInABedThatIsNotThere) {
  GrowRequest request;
  request.bed = Id<Bed>(77);
  request.spacing = Length::metres(0.4);
  EXPECT_TRUE(growDrift({}, request).places.empty());
}

TEST(GrowDrift, ItsOwnPlantsAreNoObstacleToADriftThatIsSetOutAnew) {
  YardBuilder builder;
  builder.bed("Slot", "POLYGON ((0 0, 1.65 0, 1.65 0.42, 0 0.42, 0 0))");
  builder.drift("Carex", test::row(3, 0.4, {0.4, 0.21}));
  GrowRequest request = requestIn(builder, {0.8, 0.21}, 3);
  EXPECT_TRUE(growDrift(builder.build(), request).places.empty());
  request.inPlaceOf = builder.lastDrift();
  EXPECT_EQ(growDrift(builder.build(), request).places.size(), 3U);
}

}  // namespace
}  // namespace tussock
