// SPDX-License-Identifier: MIT
#include "core/geometry/lattice.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/geometry/point_index.h"
#include "tests/support/triangular_lattice.h"

namespace tussock {
namespace {

struct Row {
  double spacingInches;
  double square;      // plants per square foot: 144 / s²
  double triangular;  // times 2/sqrt 3
};
class PlantsPerSquareFoot : public testing::TestWithParam<Row> {};

// Identities of the square and triangular pattern, rounded to four places.
TEST_P(PlantsPerSquareFoot, FollowsThePattern) {
  const Length spacing = Length::inches(GetParam().spacingInches);
  EXPECT_NEAR(squareCount(Area::squareFeet(1), spacing), GetParam().square, 5e-4);
  EXPECT_NEAR(triangularCount(Area::squareFeet(1), spacing), GetParam().triangular, 5e-4);
}

INSTANTIATE_TEST_SUITE_P(Spacings, PlantsPerSquareFoot,
                         testing::Values(Row{6, 4.0, 4.6188}, Row{8, 2.25, 2.5981},
                                         Row{9, 1.7778, 2.0528}, Row{10, 1.44, 1.6628},
                                         Row{12, 1.0, 1.1547}, Row{15, 0.64, 0.7390},
                                         Row{18, 0.4444, 0.5132}, Row{24, 0.25, 0.2887},
                                         Row{30, 0.16, 0.1848}, Row{36, 0.1111, 0.1283}));

struct TableRow {
  double spacingInches;
  int plants;
};
class PlantsFor100SquareFeet : public testing::TestWithParam<TableRow> {};

// Mississippi State University Extension, "Number of ground-cover plants for planting areas":
// plants for 100 sq ft on a square grid; the table rounds up.
TEST_P(PlantsFor100SquareFeet, MatchesTheExtensionTable) {
  const double count = squareCount(Area::squareFeet(100), Length::inches(GetParam().spacingInches));
  EXPECT_EQ(static_cast<int>(std::ceil(count - 1e-9)), GetParam().plants);
}

INSTANTIATE_TEST_SUITE_P(Spacings, PlantsFor100SquareFeet,
                         testing::Values(TableRow{6, 400}, TableRow{8, 225}, TableRow{9, 178},
                                         TableRow{12, 100}, TableRow{18, 45}, TableRow{24, 25}));

class TurnedLattice : public testing::TestWithParam<double> {};

TEST_P(TurnedLattice, StandsAtItsSpacingAndDensity) {
  const Length spacing = Length::metres(0.4);
  const Box box{{-3, 2}, {37, 32}};
  const auto points = test::triangularLattice(box, spacing, {1.1, 2.2}, Angle::degrees(GetParam()));
  const double expected = triangularCount(Area::squareMetres(40 * 30), spacing);
  EXPECT_NEAR(static_cast<double>(points.size()) / expected, 1.0, 0.01);
  const PointIndex index(points);
  for (std::size_t i = 0; i < points.size(); i += 97) {
    const auto nearest = index.nearest(points[i], 2);
    const double d =
        std::max(distance(points[i], points[nearest[0]]), distance(points[i], points[nearest[1]]));
    EXPECT_NEAR(d, 0.4, 1e-9);
  }
}

INSTANTIATE_TEST_SUITE_P(Axes, TurnedLattice, testing::Values(0.0, 17.0, 30.0, 90.0, 211.0));

// Densest packing of equal discs, pi / (2 sqrt 3) (Lagrange; Thue).
TEST(TriangularGround, IsTheDensestPackingsCell) {
  const double disc = std::numbers::pi * 0.25;
  EXPECT_NEAR(disc / triangularGround(Length::metres(1)).squareMetres(), 0.9068996821, 1e-10);
}

TEST(PointIndex, AgreesWithLookingAtEveryPoint) {
  const auto points =
      test::triangularLattice({{0, 0}, {5, 5}}, Length::metres(0.3), {0, 0}, Angle());
  const PointIndex index(points);
  const Point centre{2.4, 2.7};
  std::size_t expected = 0;
  for (const Point p : points) expected += distance(p, centre) <= 1.0 ? 1 : 0;
  EXPECT_EQ(index.within(centre, 1.0).size(), expected);
  EXPECT_EQ(index.nearest(centre, 5).size(), 5u);
  EXPECT_EQ(index.nearest(centre, points.size() + 9).size(), points.size());
}

}  // namespace
}  // namespace tussock
