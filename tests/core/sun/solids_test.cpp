// SPDX-License-Identifier: MIT
#include "core/sun/solids.h"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>

#include "core/geometry/overlay.h"
#include "core/sun/convex_pieces.h"

namespace tussock {
namespace {

using std::chrono::April;
using std::chrono::November;
using std::chrono::October;

MonthDay on(std::chrono::month month, unsigned day) {
  return MonthDay(month, std::chrono::day(day));
}

Yard yardWith(Building building) {
  building.id = Id<Building>(2);
  Yard yard;
  yard.buildings = yard.buildings.with(std::move(building));
  return yard;
}
Yard yardWith(Barrier barrier) {
  barrier.id = Id<Barrier>(2);
  Yard yard;
  yard.barriers = yard.barriers.with(std::move(barrier));
  return yard;
}
Yard yardWith(Tree tree) {
  tree.id = Id<Tree>(2);
  Yard yard;
  yard.trees = yard.trees.with(std::move(tree));
  return yard;
}

Building house(Roof roof, double eave, double ridge) {
  Building building;
  building.footprint = rectangle({0, 0}, {10, 6});
  building.roof = roof;
  building.eave = Length::metres(eave);
  building.ridge = Length::metres(ridge);
  return building;
}

bool hasCorner(const ConvexSolid& body, double x, double y, double up) {
  for (const SitePoint& corner : body.corners)
    if (distance(corner.at, {x, y}) < 1e-9 && std::abs(corner.up - up) < 1e-9) return true;
  return false;
}

double highest(const ConvexSolid& body) {
  double result = 0.0;
  for (const SitePoint& corner : body.corners) result = std::max(result, corner.up);
  return result;
}

double totalArea(const std::vector<Ring>& pieces) {
  double area = 0.0;
  for (const Ring& piece : pieces) area += signedArea(piece);
  return area;
}

TEST(ConvexPiecesTest, ConvexPolygonStaysWhole) {
  const Polygon hexagon = disc({3, 4}, Length::metres(2), 6);
  ASSERT_EQ(convexPieces(hexagon).size(), 1u);
  EXPECT_EQ(convexPieces(hexagon)[0].size(), 6u);
}

TEST(ConvexPiecesTest, LShapedHouseIsTwoPiecesHoweverItIsTurned) {
  const Polygon ell{{{0, 0}, {10, 0}, {10, 4}, {4, 4}, {4, 9}, {0, 9}}, {}};
  for (const double turn : {0.0, 17.0, 45.0, 90.0, 200.0}) {
    const auto pieces = convexPieces(rotated(ell, Angle::degrees(turn), {1, 2}));
    EXPECT_EQ(pieces.size(), 2u) << turn;
    EXPECT_NEAR(totalArea(pieces), 60.0, 1e-6) << turn;
  }
}

TEST(ConvexPiecesTest, CourtyardIsLeftOut) {
  const Polygon yard{rectangle({0, 0}, {10, 10}).outer, {rectangle({3, 3}, {7, 6}).outer}};
  const auto pieces = convexPieces(yard);
  EXPECT_NEAR(totalArea(pieces), 88.0, 1e-6);
  for (const Ring& piece : pieces) EXPECT_FALSE(contains(piece, Point{5.0, 4.5}));
}

TEST(ConvexPiecesTest, StarKeepsItsGround) {
  Ring star;
  for (int i = 0; i < 10; ++i) {
    const double angle = 0.3 + i * std::numbers::pi / 5.0;
    star.push_back(Point{std::cos(angle), std::sin(angle)} * (i % 2 == 0 ? 5.0 : 2.0));
  }
  EXPECT_NEAR(totalArea(convexPieces({star, {}})), signedArea(star), 1e-6);
}

TEST(ConvexPiecesTest, NothingOfAPolygonWithoutGround) {
  EXPECT_TRUE(convexPieces({{{0, 0}, {1, 0}, {2, 0}}, {}}).empty());
  EXPECT_TRUE(convexPieces({{{0, 0}, {1, 0}, {NAN, 1}}, {}}).empty());
  EXPECT_TRUE(convexPieces({}).empty());
}

TEST(RoofTest, FlatRoofIsAPrism) {
  const Solids solids = solidsOf(yardWith(house(Roof::Flat, 3, 3)));
  ASSERT_EQ(solids.bodies.size(), 1u);
  EXPECT_EQ(solids.bodies[0].corners.size(), 8u);
  EXPECT_TRUE(hasCorner(solids.bodies[0], 10, 6, 3));
}

TEST(RoofTest, GableRunsAlongTheLongSide) {
  const Solids solids = solidsOf(yardWith(house(Roof::Gable, 3, 5)));
  ASSERT_EQ(solids.bodies.size(), 1u);
  EXPECT_TRUE(hasCorner(solids.bodies[0], 0, 3, 5));
  EXPECT_TRUE(hasCorner(solids.bodies[0], 10, 3, 5));
  EXPECT_TRUE(hasCorner(solids.bodies[0], 10, 6, 3));
}

TEST(RoofTest, RidgeAzimuthTurnsTheGable) {
  Building building = house(Roof::Gable, 3, 5);
  building.ridgeAzimuth = Angle();  // north and south, across the house
  const Solids solids = solidsOf(yardWith(building));
  ASSERT_EQ(solids.bodies.size(), 1u);
  EXPECT_TRUE(hasCorner(solids.bodies[0], 5, 0, 5));
  EXPECT_TRUE(hasCorner(solids.bodies[0], 5, 6, 5));
}

TEST(RoofTest, HipEndsSlopeLikeTheSides) {
  const Solids solids = solidsOf(yardWith(house(Roof::Hip, 3, 5)));
  ASSERT_EQ(solids.bodies.size(), 1u);
  EXPECT_TRUE(hasCorner(solids.bodies[0], 3, 3, 5));
  EXPECT_TRUE(hasCorner(solids.bodies[0], 7, 3, 5));
  EXPECT_FALSE(hasCorner(solids.bodies[0], 0, 3, 5));
}

TEST(RoofTest, RidgeNoHigherThanTheEaveIsFlat) {
  const Solids solids = solidsOf(yardWith(house(Roof::Gable, 3, 3)));
  ASSERT_EQ(solids.bodies.size(), 1u);
  EXPECT_EQ(solids.bodies[0].corners.size(), 8u);
  EXPECT_EQ(highest(solids.bodies[0]), 3.0);
}

TEST(RoofTest, HeightsThatAreNoneCastNothing) {
  constexpr double kInfinite = std::numeric_limits<double>::infinity();
  for (const double eave : {0.0, -3.0, static_cast<double>(NAN), kInfinite})
    EXPECT_TRUE(solidsOf(yardWith(house(Roof::Flat, eave, eave))).bodies.empty()) << eave;
}

Barrier fence(Polyline line, double thickness) {
  Barrier barrier;
  barrier.line = std::move(line);
  barrier.thickness = Length::metres(thickness);
  barrier.height = Length::metres(2);
  barrier.openness = 0.4;
  return barrier;
}

TEST(BarrierTest, EachStretchIsAPrismOfOneGroup) {
  const Solids solids = solidsOf(yardWith(fence({{0, 0}, {5, 0}, {5, 5}}, 0.2)));
  ASSERT_EQ(solids.bodies.size(), 2u);
  EXPECT_EQ(solids.bodies[0].group, solids.bodies[1].group);
  EXPECT_EQ(solids.bodies[0].openness, 0.4);
  EXPECT_TRUE(hasCorner(solids.bodies[0], 0, 0.1, 2));
  EXPECT_TRUE(hasCorner(solids.bodies[0], 5.1, -0.1, 2));  // the outer corner is filled
}

TEST(BarrierTest, FootprintStandsForTheLine) {
  Barrier barrier = fence({}, 0.2);
  barrier.footprint = rectangle({1, 1}, {4, 2});
  const Solids solids = solidsOf(yardWith(barrier));
  ASSERT_EQ(solids.bodies.size(), 1u);
  EXPECT_TRUE(hasCorner(solids.bodies[0], 4, 2, 2));
}

TEST(BarrierTest, WhatLetsAllThroughOrHasNoHeightCastsNothing) {
  Barrier open = fence({{0, 0}, {5, 0}}, 0.2);
  open.openness = 1.0;
  EXPECT_TRUE(solidsOf(yardWith(open)).bodies.empty());
  Barrier flat = fence({{0, 0}, {5, 0}}, 0.2);
  flat.height = Length();
  EXPECT_TRUE(solidsOf(yardWith(flat)).bodies.empty());
  EXPECT_TRUE(solidsOf(yardWith(fence({{0, 0}, {0, 0}}, 0.2))).bodies.empty());
}

TEST(CrownTest, LeavesAreOnFromTheFirstDayToTheDayBeforeTheyAreOff) {
  Crown crown;
  crown.opennessLeaf = 0.1, crown.opennessBare = 0.7;
  crown.leafOn = on(April, 20), crown.leafOff = on(November, 1);
  EXPECT_EQ(opennessOn(crown, on(April, 19)), 0.7);
  EXPECT_EQ(opennessOn(crown, on(April, 20)), 0.1);
  EXPECT_EQ(opennessOn(crown, on(October, 31)), 0.1);
  EXPECT_EQ(opennessOn(crown, on(November, 1)), 0.7);
}

TEST(CrownTest, LeafDatesMayRunOverTheNewYear) {
  Crown crown;
  crown.opennessLeaf = 0.1, crown.opennessBare = 0.7;
  crown.leafOn = on(October, 1), crown.leafOff = on(April, 15);
  EXPECT_EQ(opennessOn(crown, on(std::chrono::January, 1)), 0.1);
  EXPECT_EQ(opennessOn(crown, on(std::chrono::December, 31)), 0.1);
  EXPECT_EQ(opennessOn(crown, on(std::chrono::July, 1)), 0.7);
}

TEST(CrownTest, EvergreenIsNeverBare) {
  Crown crown;
  crown.opennessLeaf = 0.1, crown.opennessBare = 0.7, crown.evergreen = true;
  crown.leafOn = on(April, 20), crown.leafOff = on(November, 1);
  EXPECT_EQ(opennessOn(crown, on(std::chrono::January, 1)), 0.1);
}

TEST(CrownTest, TreeWithoutHeightCastsNothing) {
  for (const double height : {0.0, -2.0, static_cast<double>(NAN)}) {
    Tree tree;
    tree.height = Length::metres(height);
    EXPECT_TRUE(solidsOf(yardWith(tree)).crowns.empty()) << height;
  }
}

TEST(CrownTest, BaseAboveTheTopLeavesABareTrunk) {
  Tree tree;
  tree.height = Length::metres(4);
  tree.crownBase = Length::metres(6);
  const Solids solids = solidsOf(yardWith(tree));
  ASSERT_EQ(solids.crowns.size(), 1u);
  EXPECT_EQ(solids.crowns[0].radius, 0.0);
  EXPECT_EQ(solids.crowns[0].base, 4.0);
  EXPECT_GT(solids.crowns[0].trunkRadius, 0.0);
}

}  // namespace
}  // namespace tussock
