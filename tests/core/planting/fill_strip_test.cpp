// SPDX-License-Identifier: MIT
// Strips a metre wide, two or three plants across: their edges line plants up, and still no rows
// show, the ground is taken and plants keep apart. The figures are those of
// docs/methods-planting.md.
#include <gtest/gtest.h>

#include "core/planting/measures.h"
#include "tests/core/planting/filled_bed.h"
#include "tests/support/random_beds.h"
#include "tests/support/triangular_lattice.h"

namespace tussock {
namespace {

class FilledStrip : public testing::TestWithParam<unsigned> {};

// The largest bin over the mean one of a strict lattice in the strip.
double rowinessOfLattice(const Bed& bed, double spacing) {
  std::vector<Point> lattice;
  for (const Point p : test::triangularLattice(boundsOf(bed.outline), Length::metres(spacing),
                                               {0, 0}, Angle::degrees(5)))
    if (contains(bed.outline, p)) lattice.push_back(p);
  return rowsOf(lattice, std::vector<double>(lattice.size(), spacing)).rowiness;
}

TEST_P(FilledStrip, ShowsNoRowsAndIsFull) {
  const test::RandomBed random = test::randomBed(GetParam());
  ASSERT_EQ(random.shape, test::BedShape::Strip);
  const test::Filled strip = test::filled(random.yard, {});
  const BedMeasures measures = measure(strip.after, random.bed);
  ASSERT_GE(measures.rows.pairs, 300);
  // Not more than halfway from random directions, 1, to those of the lattice.
  const double lattice =
      rowinessOfLattice(*strip.after.beds.find(random.bed), measures.meanSpacing);
  EXPECT_LT(measures.rows.rowiness, 0.5 * (1.0 + lattice));
  EXPECT_GE(measures.groundTaken, 0.93);
  EXPECT_LE(measures.groundTaken, 1.03);
  EXPECT_GE(measures.meanNearest, 0.895);
  EXPECT_EQ(strip.broken(), 0);
}
INSTANTIATE_TEST_SUITE_P(Strips, FilledStrip, testing::Values(10u, 28u, 64u, 124u, 196u));

}  // namespace
}  // namespace tussock
