// SPDX-License-Identifier: MIT
#include "core/geometry/wkt.h"

#include <random>

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(Wkt, ReadsTheStandardsPolygonExample) {
  // OGC 06-103r4, 7.2.6: the text of a polygon with one hole.
  const auto p = polygonFromWkt("POLYGON ((10 10, 10 20, 20 20, 20 15, 10 10))");
  ASSERT_TRUE(p.has_value());
  EXPECT_EQ(p->outer.size(), 4u);
  EXPECT_EQ(p->outer[3], (Point{20, 15}));
}

TEST(Wkt, GivesBackTheSameDoubles) {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> coordinate(-1e4, 1e4);
  for (int round = 0; round < 100; ++round) {
    Polygon polygon;
    for (int i = 0; i < 6; ++i) polygon.outer.push_back({coordinate(random), coordinate(random)});
    polygon.holes.push_back({{0.1, 0.2}, {1.0 / 3.0, 1e-17}, {5, 6}});
    EXPECT_EQ(polygonFromWkt(toWkt(polygon)), polygon);
    EXPECT_EQ(polylineFromWkt(toWkt(polygon.outer)), polygon.outer);
  }
}

TEST(Wkt, KeepsEmptyShapes) {
  EXPECT_EQ(polygonFromWkt(toWkt(Polygon{})), Polygon{});
  EXPECT_EQ(polylineFromWkt(toWkt(Polyline{})), Polyline{});
}

class RefusedWkt : public testing::TestWithParam<const char*> {};
TEST_P(RefusedWkt, GivesNothing) {
  EXPECT_FALSE(polygonFromWkt(GetParam()).has_value());
  EXPECT_FALSE(polylineFromWkt(GetParam()).has_value());
}
INSTANTIATE_TEST_SUITE_P(Texts, RefusedWkt,
                         testing::Values("", "POLYGON", "POLYGON ((0 0, 1 0, 1 1))",
                                         "POLYGON ((0 0, 1 0, 1 1, 0 1))",
                                         "POLYGON ((0 0, 1 0, nan 1, 0 0))",
                                         "POLYGON ((0 0, 1 0, 1 1, 0 0)) x", "POINT (1 2)",
                                         "LINESTRING (1)", "LINESTRING (1 2, 3 4"));

}  // namespace
}  // namespace tussock
