// SPDX-License-Identifier: MIT
// What is drawn of a finding: the drift as it lies, not a box around it.
#include "core/checks/shown_place.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/checks/registry.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

double areaOf(const std::vector<Polygon>& place) {
  double sum = 0.0;
  for (const Polygon& part : place) sum += areaOf(part).squareMetres();
  return sum;
}

std::vector<Polygon> shown(CheckId check, const Yard& yard) {
  const Catalogue facts;
  const auto findings = runCheck(check, {yard, facts, nullptr});
  EXPECT_EQ(findings.size(), 1u);
  return findings.empty() ? std::vector<Polygon>() : shownPlace(findings.front(), yard);
}

// Four plants on a slant line 0.4 m apart: more than four discs of 0.2 m, 0.50 square metres, and
// less than a band 0.4 m wide with round ends, 1.2 x 0.4 + pi 0.2^2 = 0.61 square metres; the box
// around them has 1.6.
TEST(ShownPlace, OfADriftIsItsOutline) {
  const double step = 0.4 / std::numbers::sqrt2;
  const Yard yard = test::YardBuilder()
                        .bed("Walk", "POLYGON((0 0, 8 0, 8 8, 0 8, 0 0))")
                        .drift("Planta ignota", {{2, 2},
                                                 {2 + step, 2 + step},
                                                 {2 + 2 * step, 2 + 2 * step},
                                                 {2 + 3 * step, 2 + 3 * step}})
                        .build();
  const auto place = shown(CheckId::OddCount, yard);
  ASSERT_EQ(place.size(), 1u);
  EXPECT_GT(areaOf(place), 4 * std::numbers::pi * 0.04);
  EXPECT_LT(areaOf(place), 1.2 * 0.4 + std::numbers::pi * 0.04);
}

// Of five plants two crowd each other: a disc of the spacing around each of the two.
TEST(ShownPlace, OfCrowdedPlantsIsThosePlants) {
  const Yard yard = test::YardBuilder()
                        .bed("Walk", "POLYGON((0 0, 8 0, 8 8, 0 8, 0 0))")
                        .drift("Planta ignota", {{2, 2}, {2.1, 2}, {3, 2}, {3.4, 2}, {3.8, 2}})
                        .build();
  const auto place = shown(CheckId::Spacing, yard);
  ASSERT_EQ(place.size(), 1u);
  EXPECT_TRUE(contains(place.front(), Point{2.0, 2.0}));
  EXPECT_TRUE(contains(place.front(), Point{2.1, 2.0}));
  EXPECT_FALSE(contains(place.front(), Point{3.0, 2.0}));
}

// What is about no drift keeps its own place.
TEST(ShownPlace, OfTwoBedsIsTheGroundTheyShare) {
  const Yard yard = test::YardBuilder()
                        .bed("A", "POLYGON((0 0, 4 0, 4 4, 0 4, 0 0))")
                        .bed("B", "POLYGON((3 0, 7 0, 7 4, 3 4, 3 0))")
                        .build();
  EXPECT_NEAR(areaOf(shown(CheckId::SharedGround, yard)), 4.0, 1e-6);
}

}  // namespace
}  // namespace tussock
