// SPDX-License-Identifier: MIT
// 1 rules of every pattern on any ground  2 density against the tables  3 singles and a matrix
#include "core/planting/patterns.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/geometry/lattice.h"
#include "core/geometry/tolerance.h"
#include "core/planting/one_piece.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

using test::YardBuilder;

constexpr Pattern kPatterns[] = {Pattern::Triangular, Pattern::Square, Pattern::Single,
                                 Pattern::Matrix};

double leastShare(Pattern pattern) {
  if (pattern == Pattern::Single) return kAccentsApart;
  return isStrict(pattern) ? 1.0 : kLooseSpacing;
}

// 1 Rules

class AnyPattern : public testing::TestWithParam<unsigned> {};

void expectRules(const Yard& yard, const GrowRequest& request, const std::vector<Point>& places) {
  const Bed& bed = *yard.beds.find(request.bed);
  const double inside = std::max(bed.setback.value_or(Length()), request.spacing / 2.0).metres();
  for (std::size_t i = 0; i < places.size(); ++i) {
    EXPECT_TRUE(contains(bed.outline, places[i]));
    EXPECT_GE(distanceToEdge(bed.outline, places[i]), inside - 1e-6);
    for (const Paving& paving : yard.pavings) EXPECT_FALSE(contains(paving.outline, places[i]));
    for (std::size_t j = 0; j < i; ++j)
      EXPECT_TRUE(atLeast(Length::metres(distance(places[i], places[j])),
                          leastShare(request.pattern) * request.spacing));
    for (const Drift& drift : yard.drifts)
      for (const Plant& plant : drift.plants)
        EXPECT_TRUE(atLeast(Length::metres(distance(plant.at, places[i])),
                            drift.layer == request.layer
                                ? kLooseSpacing * (drift.spacing + request.spacing) / 2.0
                                : kBetweenLayers));
  }
}

TEST_P(AnyPattern, KeepsTheRules) {
  const test::RandomGround ground = test::randomGround(GetParam());
  Yard yard = ground.yard;
  IdSource ids(1000);
  unsigned turn = GetParam();
  for (GrowRequest request : ground.drops) {
    request.pattern = kPatterns[turn++ % 4];
    if (request.pattern == Pattern::Matrix) request.count = kAsManyAsFit;
    SCOPED_TRACE(testing::Message() << "seed " << GetParam() << " " << wordOf(request.pattern));
    const auto places = growDrift(yard, request).places;
    if (places.empty()) continue;
    EXPECT_EQ(places.size() % 2, 1U);
    EXPECT_TRUE(!isOnePiece(request.pattern) || inOnePiece(places, request.spacing));
    expectRules(yard, request, places);
    yard = test::withDrift(yard, request, places, ids);
  }
}
INSTANTIATE_TEST_SUITE_P(Seeds, AnyPattern, testing::Range(0U, 80U));

TEST(AnyPatterns, MostDropsFindRoom) {  // else the rules were tested on nothing
  int grown = 0;
  for (unsigned seed = 0; seed < 20; ++seed)
    for (const Pattern pattern : kPatterns) {
      const test::RandomGround ground = test::randomGround(seed);
      GrowRequest request = ground.drops.front();
      request.pattern = pattern;
      grown += growDrift(ground.yard, request).places.empty() ? 0 : 1;
    }
  EXPECT_GT(grown, 60);  // of 80
}

// 2 Density

struct Row {
  double inches;
  double squareAHundred;   // plants for 100 square feet, rounded up
  double triangularAFoot;  // plants for one square foot
};
class StrictDensity : public testing::TestWithParam<Row> {};

std::size_t plantsIn(Pattern pattern, double side, Length spacing) {
  Yard yard;
  Bed bed;
  bed.id = Id<Bed>(2);
  bed.outline = rectangle({0, 0}, {side, side});
  yard.beds = yard.beds.with(bed);
  GrowRequest request;
  request.bed = bed.id;
  request.pattern = pattern;
  request.spacing = spacing;
  request.count = kAsManyAsFit;
  request.at = {0.4 * side, 0.55 * side};
  request.axis = Angle();
  return growDrift(yard, request).places.size();
}

// Mississippi State University Extension, "Ground Covers": plants for 100 square feet when planted
// at a spacing in both directions. A bed of 50 by 50 spacings takes exactly as many a square foot;
// one plant less makes the count odd.
TEST_P(StrictDensity, OfTheSquarePatternIsTheHandbooks) {
  const Length spacing = Length::inches(GetParam().inches);
  const double side = 50.0 * spacing.metres();
  const auto count = static_cast<double>(plantsIn(Pattern::Square, side, spacing));
  const double feet = Area::squareMetres(side * side).squareFeet();
  EXPECT_EQ(count, 2499.0);
  EXPECT_EQ(std::ceil((count + 1.0) / feet * 100.0 - 1e-9), GetParam().squareAHundred);
}

// (144 / s²) 2/√3, the identity behind the triangular tables. Rows are whole, so that up to half a
// row at each side is lost: 50 rows of the bed's 57.
TEST_P(StrictDensity, OfTheTriangularPatternIsWithinThreePercentOfTheTables) {
  const Length spacing = Length::inches(GetParam().inches);
  const double side = 50.0 * spacing.metres();
  const auto count = static_cast<double>(plantsIn(Pattern::Triangular, side, spacing));
  const double feet = Area::squareMetres(side * side).squareFeet();
  EXPECT_NEAR(count / (feet * GetParam().triangularAFoot), 1.0, 0.03);
}
INSTANTIATE_TEST_SUITE_P(Rows, StrictDensity,
                         testing::Values(Row{6, 400, 4.6188}, Row{8, 225, 2.5981},
                                         Row{9, 178, 2.0528}, Row{12, 100, 1.1547},
                                         Row{18, 45, 0.5132}, Row{24, 25, 0.2887}));

// 3 Singles and a matrix

TEST(SinglePattern, PlantsStandApartFromEachOther) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 8, 0 8, 0 0))").viewing("S");
  GrowRequest request;
  request.bed = builder.lastBed();
  request.pattern = Pattern::Single;
  request.spacing = Length::metres(0.5);
  request.count = 7;
  request.at = {6, 4};
  const auto places = growDrift(builder.build(), request).places;
  ASSERT_EQ(places.size(), 7U);
  EXPECT_EQ(places.front(), request.at);
  for (const Point p : places) EXPECT_LT(distance(p, request.at), 6.0);  // yet one group
}

TEST(MatrixPattern, FillsWhatTheDriftsLeave) {
  YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 8, 0 8, 0 0))").viewing("S");
  Yard yard = builder.build();
  IdSource ids(1000);
  GrowRequest request;
  request.bed = builder.lastBed();
  request.spacing = Length::metres(0.5);
  request.count = 13;
  double taken = 0.0;
  for (const Point at : {Point{3, 2}, Point{8, 3}, Point{5, 6}}) {
    request.at = at;
    const auto places = growDrift(yard, request).places;
    taken += triangularGround(request.spacing).squareMetres() * static_cast<double>(places.size());
    yard = test::withDrift(yard, request, places, ids);
  }
  request.pattern = Pattern::Matrix;
  request.spacing = Length::metres(0.3);
  request.count = kAsManyAsFit;
  const auto places = growDrift(yard, request).places;
  taken += triangularGround(request.spacing).squareMetres() * static_cast<double>(places.size());
  EXPECT_GT(taken / 96.0, 0.93);  // of 12 by 8 m: the handbook quantity, for a bed filled so
  EXPECT_LT(taken / 96.0, 1.03);
}

}  // namespace
}  // namespace tussock
