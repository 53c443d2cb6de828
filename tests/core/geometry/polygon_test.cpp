// SPDX-License-Identifier: MIT
#include "core/geometry/polygon.h"

#include <gtest/gtest.h>

#include "core/geometry/wkt.h"

namespace tussock {
namespace {

Polygon shape(const char* wkt) {
  return polygonFromWkt(wkt).value();
}

const char* const kRing = "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0), (4 4, 4 6, 6 6, 6 4, 4 4))";

TEST(Area, FollowsTheShoelaceTextbookExample) {
  // (3,4)(5,11)(12,8)(9,5)(5,6) encloses 30: the usual worked example of the shoelace formula.
  EXPECT_NEAR(areaOf(shape("POLYGON ((3 4, 5 11, 12 8, 9 5, 5 6, 3 4))")).squareMetres(), 30.0,
              1e-12);
}

TEST(Area, LeavesHolesOut) {
  EXPECT_NEAR(areaOf(shape(kRing)).squareMetres(), 96.0, 1e-12);
}

TEST(Area, KeepsItsDigitsFarFromTheOrigin) {
  const Polygon far = moved(shape(kRing), {4e6, -3e6});
  EXPECT_NEAR(areaOf(far).squareMetres(), 96.0, 1e-6);
}

TEST(Perimeter, CountsHoles) {
  EXPECT_NEAR(perimeterOf(shape(kRing)).metres(), 48.0, 1e-12);
}

TEST(Centroid, OfATriangleIsTheMeanOfItsCorners) {
  const Point c = centroidOf(shape("POLYGON ((0 0, 9 0, 0 6, 0 0))"));
  EXPECT_NEAR(c.x, 3.0, 1e-12);
  EXPECT_NEAR(c.y, 2.0, 1e-12);
}

TEST(Contains, CountsTheEdgeInAndTheHoleOut) {
  const Polygon ring = shape(kRing);
  EXPECT_TRUE(contains(ring, {1, 1}));
  EXPECT_TRUE(contains(ring, {0, 5}));
  EXPECT_TRUE(contains(ring, {10, 10}));
  EXPECT_TRUE(contains(ring, {4, 5}));
  EXPECT_FALSE(contains(ring, {5, 5}));
  EXPECT_FALSE(contains(ring, {10.001, 5}));
}

TEST(Contains, IsNotFooledByARayThroughACorner) {
  const Polygon diamond = shape("POLYGON ((0 0, 2 2, 0 4, -2 2, 0 0))");
  EXPECT_TRUE(contains(diamond, {0, 2}));
  EXPECT_FALSE(contains(diamond, {-3, 2}));
  EXPECT_FALSE(contains(diamond, {3, 2}));
  EXPECT_FALSE(contains(diamond, {-1, 4}));
}

TEST(DistanceToEdge, SeesTheHole) {
  EXPECT_NEAR(distanceToEdge(shape(kRing), {3, 5}), 1.0, 1e-12);
  EXPECT_NEAR(distanceToEdge(shape(kRing), {-3, -4}), 5.0, 1e-12);
}

TEST(LabelPoint, OfAnLLiesInsideWithRoomAround) {
  const Polygon l = shape("POLYGON ((0 0, 10 0, 10 2, 2 2, 2 10, 0 10, 0 0))");
  const Point p = labelPoint(l);
  EXPECT_TRUE(contains(l, p));
  // The largest disc of the L touches both outer edges and the inner corner (2, 2): radius
  // 4 - 2 sqrt 2 from r = |(2 - r, 2 - r)|.
  EXPECT_NEAR(distanceToEdge(l, p), 4.0 - 2.0 * std::sqrt(2.0), 0.05);
}

TEST(Normalised, TurnsOuterAnticlockwiseAndHolesClockwise) {
  Polygon p = shape(kRing);
  std::reverse(p.outer.begin(), p.outer.end());
  std::reverse(p.holes[0].begin(), p.holes[0].end());
  p.outer.push_back(p.outer.back());
  const Polygon n = normalised(p);
  EXPECT_GT(signedArea(n.outer), 0.0);
  EXPECT_LT(signedArea(n.holes[0]), 0.0);
  EXPECT_EQ(n.outer.size(), 4u);
}

struct Bad {
  const char* wkt;
  Invalidity reason;
};
class Validity : public testing::TestWithParam<Bad> {};

TEST_P(Validity, NamesTheReason) {
  EXPECT_EQ(invalidityOf(shape(GetParam().wkt)), GetParam().reason);
}

INSTANTIATE_TEST_SUITE_P(
    Shapes, Validity,
    testing::Values(Bad{"POLYGON ((0 0, 1 0, 0 0, 0 0))", Invalidity::NoArea},
                    Bad{"POLYGON ((0 0, 4 4, 4 0, 0 4, 0 0))", Invalidity::CrossesItself},
                    Bad{"POLYGON ((0 0, 4 4, 4 0, 0 2, 0 0))", Invalidity::CrossesItself},
                    Bad{"POLYGON ((0 0, 1 0, 1 1, 0 1, 0 0), (5 5, 5 6, 6 6, 5 5))",
                        Invalidity::HoleOutside},
                    Bad{"POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (1 1, 1 8, 8 8, 8 1, 1 1), "
                        "(3 3, 3 5, 5 5, 5 3, 3 3))",
                        Invalidity::HoleInHole}));

TEST(Validity, FindsNothingWrongWithARing) {
  EXPECT_FALSE(invalidityOf(shape(kRing)).has_value());
}

TEST(Validity, RefusesWhatIsNotFinite) {
  Polygon p = shape(kRing);
  p.outer[1].x = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(invalidityOf(p), Invalidity::NotFinite);
}

TEST(Rotation, ByAFullTurnChangesNothing) {
  const Polygon p = shape(kRing);
  const Polygon turned =
      rotated(rotated(p, Angle::degrees(123.4), {3, -2}), Angle::degrees(236.6), {3, -2});
  for (std::size_t i = 0; i < p.outer.size(); ++i)
    EXPECT_NEAR(distance(p.outer[i], turned.outer[i]), 0.0, 1e-9);
}

TEST(Azimuth, RunsClockwiseFromNorth) {
  EXPECT_NEAR(azimuthOf({1, 0}).degrees(), 90.0, 1e-12);
  EXPECT_NEAR(azimuthOf({0, -1}).degrees(), 180.0, 1e-12);
  EXPECT_NEAR(azimuthOf({-1, 0}).degrees(), 270.0, 1e-12);
  EXPECT_NEAR(directionOf(Angle::degrees(90)).x, 1.0, 1e-12);
}

}  // namespace
}  // namespace tussock
