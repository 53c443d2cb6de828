// SPDX-License-Identifier: MIT
// Polygons that are amiss, and what they come to where only one reading is possible. The areas are
// counted by hand from the corners; what is valid is as in OGC 06-103r4, 6.1.11.
#include "core/geometry/mend.h"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/geometry/wkt.h"

namespace tussock {
namespace {

using testing::ElementsAre;

Polygon amiss(const std::string& wkt) {
  return normalised(polygonFromWkt(wkt).value());
}

double groundIn(const MendedPolygon& result) {
  double sum = 0.0;
  for (const Polygon& piece : result.pieces) sum += areaOf(piece).squareMetres();
  return sum;
}

struct Case {
  const char* wkt;
  std::vector<Mend> done;
  std::size_t pieces, holes;
  double ground;  // m²
};
void PrintTo(const Case& one, std::ostream* out) {
  *out << one.wkt;
}
class Mending : public testing::TestWithParam<Case> {};

TEST_P(Mending, KeepsTheGround) {
  const auto& [wkt, done, pieces, holes, ground] = GetParam();
  const Polygon polygon = amiss(wkt);
  ASSERT_TRUE(invalidityOf(polygon).has_value());
  const auto result = mended(polygon);
  ASSERT_TRUE(result.has_value());
  EXPECT_EQ(result->done, done);
  EXPECT_EQ(result->pieces.size(), pieces);
  std::size_t left = 0;
  for (const Polygon& piece : result->pieces) {
    left += piece.holes.size();
    EXPECT_FALSE(invalidityOf(piece).has_value()) << toWkt(piece);
  }
  EXPECT_EQ(left, holes);
  EXPECT_NEAR(groundIn(*result), ground, 1e-6);
}

const auto kSpike = std::vector{Mend::SpikeTakenOff};
const auto kParted = std::vector{Mend::TouchParted};
const auto kCutOut = std::vector{Mend::HoleCutOut};
const auto kJoined = std::vector{Mend::HolesJoined};

INSTANTIATE_TEST_SUITE_P(
    Shapes, Mending,
    testing::Values(
        // a spike outwards from a corner, from a side, along a side, and inwards
        Case{"POLYGON ((0 0, 6 0, 6 4, 6 7, 6 4, 0 4, 0 0))", kSpike, 1, 0, 24.0},
        Case{"POLYGON ((0 0, 6 0, 6 4, 3 4, 3 6, 3 4, 0 4, 0 0))", kSpike, 1, 0, 24.0},
        Case{"POLYGON ((0 0, 8 0, 6 0, 6 4, 0 4, 0 0))", kSpike, 1, 0, 24.0},
        Case{"POLYGON ((0 0, 6 0, 6 4, 3 4, 3 1, 3 4, 0 4, 0 0))", kSpike, 1, 0, 24.0},
        // a corner that touches the side across, and two beds that meet in a corner
        Case{"POLYGON ((0 0, 6 0, 6 3, 3 0, 0 3, 0 0))", kParted, 2, 0, 9.0},
        Case{"POLYGON ((0 0, 2 0, 2 2, 4 2, 4 4, 2 4, 2 2, 0 2, 0 0))", kParted, 2, 0, 8.0},
        // an outline that closes about ground of others: a hole that touches it
        Case{"POLYGON ((0 0, 6 0, 6 4, 3 4, 4 2, 2 2, 3 4, 0 4, 0 0))", kParted, 1, 1, 22.0},
        // a hole drawn by a cut from the edge and back
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 2, 2 2, 2 3, 4 3, 4 1, 2 1, 2 2, 0 2, 0 0))",
             {Mend::SpikeTakenOff, Mend::TouchParted},
             1,
             1,
             20.0},
        // holes along the edge, across it, and across the whole bed
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (2 0, 4 0, 4 1, 2 1, 2 0))", kCutOut, 1, 0, 22.0},
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (2 -1, 4 -1, 4 1, 2 1, 2 -1))", kCutOut, 1, 0,
             22.0},
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (2 -1, 4 -1, 4 5, 2 5, 2 -1))", kCutOut, 2, 0,
             16.0},
        // holes that overlap, that share a side, and one drawn twice
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (1 1, 3 1, 3 3, 1 3, 1 1), "
             "(2 2, 4 2, 4 3.5, 2 3.5, 2 2))",
             kJoined, 1, 1, 24.0 - 4.0 - 3.0 + 1.0},
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (1 1, 3 1, 3 3, 1 3, 1 1), "
             "(3 1, 5 1, 5 3, 3 3, 3 1))",
             kJoined, 1, 1, 16.0},
        Case{"POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (1 1, 3 1, 3 3, 1 3, 1 1), "
             "(1 1, 3 1, 3 3, 1 3, 1 1))",
             kJoined, 1, 1, 20.0}));

class Guessing : public testing::TestWithParam<const char*> {};
TEST_P(Guessing, IsLeftToWhoDrewIt) {
  const Polygon polygon = amiss(GetParam());
  ASSERT_TRUE(invalidityOf(polygon).has_value());
  EXPECT_FALSE(mended(polygon).has_value());
}
INSTANTIATE_TEST_SUITE_P(
    Shapes, Guessing,
    testing::Values("POLYGON ((0 0, 4 4, 4 0, 0 3, 0 0))",            // crosses itself
                    "POLYGON ((0 0, 2 2, 4 4, 4 0, 2 2, 0 4, 0 0))",  // and in a corner
                    "POLYGON ((0 0, 9 0, 9 9, 4 9, 4 -2, 2 -2, 2 4, 8 4, 8 6, 0 6, 0 0))",
                    // once round and once more within
                    "POLYGON ((0 0, 6 0, 6 6, 0 6, 0 0, 3 1, 3 3, 1 3, 0 0))",
                    "POLYGON ((0 0, 1 0, 0 0, 0 0))",                             // no ground
                    "POLYGON ((0 0, 1 0, 1 1, 0 1, 0 0), (5 5, 5 6, 6 6, 5 5))",  // hole outside
                    "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (1 1, 1 8, 8 8, 8 1, 1 1), "
                    "(3 3, 3 5, 5 5, 5 3, 3 3))",  // hole in a hole
                    "POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (-1 -1, -1 5, 7 5, 7 -1, -1 -1))"));

// Whatever it is given, what it gives is valid.
TEST(MendingAtRandom, GivesValidPiecesOrNone) {
  std::mt19937 engine(7);
  std::uniform_int_distribution<int> corner(0, 4), corners(4, 9);
  int mendedOnes = 0;
  for (int i = 0; i < 1500; ++i) {
    Polygon polygon;
    for (int n = corners(engine); n > 0; --n)
      polygon.outer.push_back({1.0 * corner(engine), 1.0 * corner(engine)});
    polygon = normalised(polygon);
    if (!invalidityOf(polygon)) continue;
    const auto result = mended(polygon);
    if (!result) continue;
    ++mendedOnes;
    for (const Polygon& piece : result->pieces)
      ASSERT_FALSE(invalidityOf(piece).has_value()) << toWkt(polygon);
    EXPECT_NEAR(groundIn(*result), std::abs(signedArea(polygon.outer)), 1e-6) << toWkt(polygon);
  }
  EXPECT_GT(mendedOnes, 20);
}

}  // namespace
}  // namespace tussock
