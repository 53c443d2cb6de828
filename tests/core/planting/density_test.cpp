// SPDX-License-Identifier: MIT
// What a bed takes: against the planting tables that handbooks print.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/lattice.h"
#include "core/geometry/tolerance.h"
#include "core/planting/grow.h"
#include "tests/core/planting/random_ground.h"
#include "tests/support/triangular_lattice.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

constexpr int kAsManyAsFit = std::numeric_limits<int>::max();

struct SquareRow {
  double inches;
  double perHundredSquareFeet;
};
class SquareTable : public testing::TestWithParam<SquareRow> {};

// Mississippi State University Extension, "Ground Covers", number of ground-cover plants for
// planting areas of 100 sq ft. The table rounds 177.78 and 44.44 up.
TEST_P(SquareTable, IsWhatSquareCountGives) {
  const double count = squareCount(Area::squareFeet(100), Length::inches(GetParam().inches));
  EXPECT_EQ(std::ceil(count - 1e-9), GetParam().perHundredSquareFeet);
}
INSTANTIATE_TEST_SUITE_P(Rows, SquareTable,
                         testing::Values(SquareRow{6, 400}, SquareRow{8, 225}, SquareRow{9, 178},
                                         SquareRow{12, 100}, SquareRow{18, 45}, SquareRow{24, 25}));

struct TriangularRow {
  double inches;
  double perSquareFoot;  // (144 / s²) 2/√3, the identity behind the handbooks' triangular tables
};
class TriangularTable : public testing::TestWithParam<TriangularRow> {};

TEST_P(TriangularTable, IsWhatTriangularCountGives) {
  EXPECT_NEAR(triangularCount(Area::squareFeet(1), Length::inches(GetParam().inches)),
              GetParam().perSquareFoot, 5e-4);
}

struct PlantedGround {
  double side = 0.0;     // metres
  double spacing = 0.0;  // metres
  std::vector<Point> places;
};

// A square bed 50 spacings wide under one drift of as many plants as fit.
PlantedGround filledBed(double inches) {
  PlantedGround bed;
  bed.spacing = Length::inches(inches).metres();
  bed.side = 50.0 * bed.spacing;
  Yard yard;
  Bed ground;
  ground.id = Id<Bed>(2);
  ground.outline = rectangle({0, 0}, {bed.side, bed.side});
  yard.beds = yard.beds.with(ground);
  GrowRequest request;
  request.bed = ground.id;
  request.spacing = Length::metres(bed.spacing);
  request.count = kAsManyAsFit;
  request.at = {0.4 * bed.side, 0.55 * bed.side};
  bed.places = growDrift(yard, request).places;
  return bed;
}

std::vector<Point> innerOf(const PlantedGround& bed) {
  std::vector<Point> inner;
  const Box box = Box{{0, 0}, {bed.side, bed.side}}.grown(-3.0 * bed.spacing);
  for (const Point p : bed.places)
    if (box.contains(p)) inner.push_back(p);
  return inner;
}

TEST_P(TriangularTable, IsWithinThreePercentOfWhatALargeBedTakes) {
  const PlantedGround bed = filledBed(GetParam().inches);
  const double squareFeet = Area::squareMetres(bed.side * bed.side).squareFeet();
  const double expected = squareFeet * GetParam().perSquareFoot;
  EXPECT_NEAR(static_cast<double>(bed.places.size()) / expected, 1.0, 0.03);
  // Not only on the whole: away from the edges they really stand so.
  const double inner = bed.side - 6.0 * bed.spacing;
  const double expectedInner =
      Area::squareMetres(inner * inner).squareFeet() * GetParam().perSquareFoot;
  EXPECT_NEAR(static_cast<double>(innerOf(bed).size()) / expectedInner, 1.0, 0.03);
}
INSTANTIATE_TEST_SUITE_P(Rows, TriangularTable,
                         testing::Values(TriangularRow{6, 4.6188}, TriangularRow{8, 2.5981},
                                         TriangularRow{9, 2.0528}, TriangularRow{10, 1.6628},
                                         TriangularRow{12, 1.1547}, TriangularRow{15, 0.7390},
                                         TriangularRow{18, 0.5132}, TriangularRow{24, 0.2887},
                                         TriangularRow{30, 0.1848}, TriangularRow{36, 0.1283}));

// The largest bin over the mean one, of the directions between plants nearer than 2.5 spacings.
double rowiness(const std::vector<Point>& points, double spacing) {
  std::array<int, 18> bins{};
  int pairs = 0;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      const Point step = points[i] - points[j];
      if (std::hypot(step.x, step.y) >= 2.5 * spacing) continue;
      const double turn =
          std::fmod(std::atan2(step.y, step.x) + 2.0 * std::numbers::pi, std::numbers::pi);
      ++bins[std::min<std::size_t>(17, static_cast<std::size_t>(turn / std::numbers::pi * 18.0))];
      ++pairs;
    }
  return 18.0 * *std::max_element(bins.begin(), bins.end()) / std::max(1, pairs);
}

TEST(Rows, DoNotShowInAFilledBed) {
  const PlantedGround bed = filledBed(12);
  const Length spacing = Length::metres(bed.spacing);
  // Turned by 5 degrees, so that the rows fall into the middle of bins: the strictest comparison.
  const auto lattice =
      test::triangularLattice({{0, 0}, {bed.side, bed.side}}, spacing, {0, 0}, Angle::degrees(5));
  const double strict = rowiness(lattice, bed.spacing);
  const double without = 1.0;  // directions at random fill all bins alike
  EXPECT_GT(strict, 3.5);
  EXPECT_LT(rowiness(bed.places, bed.spacing), (strict + without) / 2.0);
}

TEST(PlantedGround, NearestPlantsStandAboutASpacingApart) {
  const PlantedGround bed = filledBed(12);
  double sum = 0.0;
  for (const Point p : bed.places) {
    double nearest = bed.side;
    for (const Point q : bed.places)
      if (!(p == q)) nearest = std::min(nearest, distance(p, q));
    EXPECT_TRUE(atLeast(Length::metres(nearest), Length::metres(kLooseSpacing * bed.spacing)));
    sum += nearest;
  }
  const double mean = sum / static_cast<double>(bed.places.size()) / bed.spacing;
  EXPECT_GT(mean, 0.90);
  EXPECT_LT(mean, 1.00);
}

// Equal discs, none over another: thrown at random one after the other until none finds room they
// cover 0.547 of the plane (Feder, J. Theor. Biol. 87 (1980) 237, from memory), in the densest
// packing π / (2 √3) = 0.9069 (Lagrange 1773). Our plants, as discs as wide as they keep apart, are
// between: set out, not thrown, and not in rows.
TEST(PlantedGround, LiesBetweenRandomPlacingAndTheDensestPacking) {
  constexpr double kThrown = 0.547;
  const double densest = std::numbers::pi / (2.0 * std::numbers::sqrt3);
  const PlantedGround bed = filledBed(12);
  const auto covered = [&](double across) {
    const double inner = bed.side - 6.0 * bed.spacing;
    return static_cast<double>(innerOf(bed).size()) * std::numbers::pi / 4.0 * across * across /
           (inner * inner);
  };
  EXPECT_GT(covered(kLooseSpacing * bed.spacing), kThrown + 0.05);
  EXPECT_LT(covered(kLooseSpacing * bed.spacing), densest);
  EXPECT_NEAR(covered(bed.spacing), densest, 0.03);
}

// Drift beside drift, then single plants in what is left: seams lose a little ground.
TEST(PlantedGround, TakesItsPlantsDriftByDriftToo) {
  const double spacing = 0.3;
  const Box box{{0, 0}, {12, 12}};
  test::YardBuilder builder;
  builder.bed("Lawn", "POLYGON ((0 0, 12 0, 12 12, 0 12, 0 0))").viewing("S");
  Yard yard = builder.build();
  IdSource ids(100);
  std::vector<Point> planted;
  const auto taken = [&](Point at) {
    return std::any_of(planted.begin(), planted.end(),
                       [&](Point p) { return distance(p, at) < kLooseSpacing * spacing; });
  };
  for (const int count : {13, 3, 1})
    for (const Point at : test::triangularLattice(box, Length::metres(spacing * 0.6), {0, 0}, {})) {
      if (taken(at)) continue;
      GrowRequest request;
      request.bed = builder.lastBed();
      request.spacing = Length::metres(spacing);
      request.count = count;
      request.at = at;
      const auto places = growDrift(yard, request).places;
      if (static_cast<int>(places.size()) < count) continue;
      planted.insert(planted.end(), places.begin(), places.end());
      yard = test::withDrift(yard, request, places, ids);
    }
  const double expected = triangularCount(Area::squareMetres(144), Length::metres(spacing));
  EXPECT_NEAR(static_cast<double>(planted.size()) / expected, 1.0, 0.04);
}

}  // namespace
}  // namespace tussock
