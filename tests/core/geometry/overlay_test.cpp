// SPDX-License-Identifier: MIT
#include "core/geometry/overlay.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include <gtest/gtest.h>

#include "core/geometry/wkt.h"

namespace tussock {
namespace {

Polygon drawn(const char* wkt) {
  return polygonFromWkt(wkt).value();
}

double total(const std::vector<Polygon>& parts) {
  double sum = 0.0;
  for (const Polygon& part : parts) sum += areaOf(part).squareMetres();
  return sum;
}

TEST(Inset, OfASquareLosesAStripAllRound) {
  const auto parts = inset(rectangle({0, 0}, {10, 10}), Length::metres(1));
  ASSERT_EQ(parts.size(), 1u);
  EXPECT_NEAR(total(parts), 64.0, 1e-9);
}

TEST(Inset, SplitsADumbbellAndEndsInNothing) {
  const Polygon dumbbell = drawn(
      "POLYGON ((0 0, 4 0, 4 1.5, 6 1.5, 6 0, 10 0, 10 4, 6 4, 6 2.5, 4 2.5, 4 4, 0 4, 0 0))");
  EXPECT_EQ(inset(dumbbell, Length::metres(0.6)).size(), 2u);
  EXPECT_TRUE(inset(dumbbell, Length::metres(2.1)).empty());
}

TEST(Inset, EveryPointKeepsItsDistance) {
  const Polygon l = drawn("POLYGON ((0 0, 10 0, 10 3, 3 3, 3 10, 0 10, 0 0))");
  for (const Polygon& part : inset(l, Length::metres(0.5)))
    for (const Point p : part.outer) EXPECT_NEAR(distanceToEdge(l, p), 0.5, 1e-6);
}

TEST(Overlay, UnionPlusIntersectionIsTheSum) {
  const Polygon a = rectangle({0, 0}, {4, 4});
  const Polygon b = rectangle({3, 3}, {6, 8});
  EXPECT_NEAR(total(intersection(a, b)), 1.0, 1e-9);
  EXPECT_NEAR(total(unionOf({a, b})) + total(intersection(a, b)), 16.0 + 15.0, 1e-9);
  EXPECT_NEAR(total(difference(a, b)), 15.0, 1e-9);
  EXPECT_TRUE(intersects(a, b));
  EXPECT_FALSE(intersects(a, rectangle({5, 0}, {6, 1})));
}

TEST(Strip, HasItsWidthAndFlatEnds) {
  EXPECT_NEAR(total(strip({{0, 0}, {10, 0}}, Length::metres(0.5))), 5.0, 1e-9);
  EXPECT_NEAR(total(strip({{0, 0}, {10, 0}, {10, 10}}, Length::metres(1))), 20.0, 1e-9);
}

TEST(Wrap, JoinsNeighboursAndKeepsStrangersApart) {
  const std::vector<Point> points{{0, 0}, {0.5, 0}, {5, 0}};
  EXPECT_EQ(wrapAround(points, Length::metres(0.2), Length::metres(0.4)).size(), 2u);
  EXPECT_EQ(wrapAround(points, Length::metres(0.2), Length()).size(), 3u);
}

TEST(Wrap, OfOnePointIsADisc) {
  const auto parts = wrapAround({{2, 3}}, Length::metres(1), Length());
  ASSERT_EQ(parts.size(), 1u);
  // A regular polygon of 32 sides covers 32/2 sin(2 pi/32) of the unit disc's square radius.
  EXPECT_NEAR(total(parts), 16.0 * std::sin(std::numbers::pi / 16.0), 1e-6);
}

// Thirteen plants set out closely, two of them amid the others.
TEST(Wrap, HoldsEveryPoint) {
  const std::vector<Point> points{
      {17.533766, 13.346630}, {17.708572, 12.966395}, {18.017819, 13.256113},
      {18.103299, 12.832269}, {18.409776, 13.104547}, {17.287934, 12.993126},
      {17.532955, 12.597009}, {17.101574, 12.593244}, {18.358287, 13.526656},
      {18.740234, 13.331121}, {18.727398, 13.753837}, {19.100148, 13.528869},
      {16.776370, 12.884534}};
  const auto parts = wrapAround(points, Length::metres(0.225), Length::metres(0.45));
  for (const Point p : points)
    EXPECT_TRUE(std::any_of(parts.begin(), parts.end(),
                            [&](const Polygon& part) { return contains(part, p); }))
        << p.x << " " << p.y;
}

TEST(SmallestRectangle, FindsATurnedOne) {
  std::vector<Point> points;
  for (const Point p : {Point{0, 0}, Point{4, 0}, Point{4, 1}, Point{0, 1}, Point{2, 0.5}})
    points.push_back(rotated(p, Angle::degrees(37)));
  const auto r = smallestRectangle(points, Length::metres(0.25));
  EXPECT_NEAR(r.length, 4.5, 1e-9);
  EXPECT_NEAR(r.width, 1.5, 1e-9);
  EXPECT_NEAR(r.axis.degrees(), 37.0, 1e-9);
}

TEST(SmallestRectangle, NeverBeatsTheHullsAreaNorLosesToTheBox) {
  std::mt19937 random(20270414);
  std::uniform_real_distribution<double> coordinate(-5.0, 5.0);
  for (int round = 0; round < 50; ++round) {
    std::vector<Point> points(12);
    for (Point& p : points) p = {coordinate(random), coordinate(random)};
    const auto r = smallestRectangle(points, Length());
    const Box box = boundsOf(points);
    EXPECT_LE(r.length * r.width, box.width() * box.height() + 1e-9) << "round " << round;
    EXPECT_GE(r.length * r.width, std::abs(signedArea(convexHull(points))) - 1e-9);
    EXPECT_GE(r.length, r.width);
  }
}

TEST(WrapAround, LosesNoDiscWhereManyCirclesMeet) {
  const std::vector<Point> points{{0.5, 1.5}, {0.9, 1.5}, {1.3, 1.5}, {0.7, 1.15}, {1.1, 1.15}};
  const auto outline = wrapAround(points, Length::metres(0.2), Length::metres(0.4));
  ASSERT_EQ(outline.size(), 1u);
  for (const Point p : points) EXPECT_TRUE(contains(outline.front(), p)) << p.x << ' ' << p.y;
}

}  // namespace
}  // namespace tussock
