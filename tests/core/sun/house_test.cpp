// SPDX-License-Identifier: MIT
// Houses in the shape of an L, eaves, floating bodies, and buildings on a slope.
#include <cmath>

#include <gtest/gtest.h>

#include "core/sun/legs.h"
#include "core/sun/map.h"
#include "core/sun/roof.h"
#include "core/sun/shade.h"

namespace tussock {
namespace {

using namespace std::chrono_literals;

const Polygon kEll{{{0, 0}, {12, 0}, {12, 4}, {6, 4}, {6, 10}, {0, 10}}, {}};

Building house(Polygon footprint, Roof roof, double eave, double ridge) {
  Building building;
  building.id = Id<Building>(2);
  building.footprint = std::move(footprint);
  building.roof = roof;
  building.eave = Length::metres(eave);
  building.ridge = Length::metres(ridge);
  return building;
}

// The bodies' highest point over a place: the hull of each, cut by the plumb line.
double heightAt(const std::vector<ConvexSolid>& bodies, Point p) {
  double highest = 0.0;
  const auto& all = bodies;
  for (const ConvexSolid& body : all)
    for (const SitePoint& a : body.corners)
      for (const SitePoint& b : body.corners)
        for (const SitePoint& c : body.corners) {
          const double area = cross(b.at - a.at, c.at - a.at);
          if (std::abs(area) < 1e-9) continue;
          const double u = cross(p - a.at, c.at - a.at) / area;
          const double v = cross(b.at - a.at, p - a.at) / area;
          if (u < 0.0 || v < 0.0 || u + v > 1.0) continue;
          highest = std::max(highest, a.up + u * (b.up - a.up) + v * (c.up - a.up));
        }
  return highest;
}

TEST(LegsTest, EllHasTwoLegsThatShareTheCorner) {
  const auto legs = legsOf(kEll);
  ASSERT_TRUE(legs);
  EXPECT_NEAR(legs->wide.width, 6.0, 1e-9);
  EXPECT_NEAR(legs->wide.length, 10.0, 1e-9);
  EXPECT_NEAR(legs->narrow.width, 4.0, 1e-9);
  EXPECT_NEAR(legs->narrow.length, 12.0, 1e-9);
  EXPECT_NEAR(signedArea(legs->wide.ground), 60.0, 1e-9);
  EXPECT_NEAR(signedArea(legs->narrow.ground), 48.0, 1e-9);
}

TEST(LegsTest, TurnedMirroredAndWithPointsOnItsWallsItIsAnEllStill) {
  for (const double turn : {10.0, 90.0, 133.0}) {
    Polygon ell = rotated(kEll, Angle::degrees(turn), {3, 3});
    ell.outer.insert(ell.outer.begin() + 1, (ell.outer[0] + ell.outer[1]) * 0.5);
    ASSERT_TRUE(legsOf(ell)) << turn;
    EXPECT_NEAR(legsOf(ell)->narrow.width, 4.0, 1e-9) << turn;
    for (Point& p : ell.outer) p.x = -p.x;
    ASSERT_TRUE(legsOf(ell)) << turn;
    EXPECT_NEAR(legsOf(ell)->narrow.length, 12.0, 1e-9) << turn;
  }
}

TEST(LegsTest, OtherShapesHaveNone) {
  EXPECT_FALSE(legsOf(rectangle({0, 0}, {10, 6})));
  EXPECT_FALSE(legsOf(disc({0, 0}, Length::metres(5), 6)));
  EXPECT_FALSE(legsOf({{{0, 0}, {12, 0}, {12, 4}, {7, 5}, {6, 10}, {0, 10}}, {}}));
  Polygon court = kEll;
  court.holes.push_back(rectangle({1, 1}, {2, 2}).outer);
  EXPECT_FALSE(legsOf(court));
}

// A hip roof of one pitch rises with the distance to the nearest eave (the straight skeleton of
// Aichholzer and others, 1995), which for an L is the higher of its two legs' roofs.
TEST(EllRoofTest, HipIsTheHigherOfTwoRectangles) {
  const auto bodies = bodiesOf(house(kEll, Roof::Hip, 3, 6));
  EXPECT_EQ(bodies.size(), 2u);
  EXPECT_NEAR(heightAt(bodies, {3, 6}), 6.0, 1e-9);    // ridge of the wide leg: pitch 1
  EXPECT_NEAR(heightAt(bodies, {9, 2}), 5.0, 1e-9);    // ridge of the narrow leg
  EXPECT_NEAR(heightAt(bodies, {11, 2}), 4.0, 1e-9);   // its hipped end
  EXPECT_NEAR(heightAt(bodies, {1, 0.5}), 3.5, 1e-9);  // at the outer corner
  EXPECT_NEAR(heightAt(bodies, {5, 3}), 4.0, 1e-9);    // in the valley
  EXPECT_NEAR(heightAt(bodies, {3, 9.5}), 3.5, 1e-9);
}

TEST(EllRoofTest, GableOfTheNarrowLegEndsUnderTheRidgeOfTheWide) {
  const auto bodies = bodiesOf(house(kEll, Roof::Gable, 3, 6));
  EXPECT_EQ(bodies.size(), 2u);
  EXPECT_NEAR(heightAt(bodies, {3, 0}), 6.0, 1e-9);    // gable end
  EXPECT_NEAR(heightAt(bodies, {12, 2}), 5.0, 1e-9);   // gable end of the narrow leg
  EXPECT_NEAR(heightAt(bodies, {1, 2}), 4.0, 1e-9);    // the far slope keeps its pitch
  EXPECT_NEAR(heightAt(bodies, {5.5, 2}), 5.0, 1e-9);  // both meet under the lower ridge
}

TEST(EavesTest, RoofReachesOutAndTheWallsDoNot) {
  Building building = house(rectangle({0, 0}, {10, 6}), Roof::Gable, 3, 5);
  building.overhang = Length::metres(0.5);
  const auto bodies = bodiesOf(building);
  ASSERT_EQ(bodies.size(), 2u);
  EXPECT_NEAR(heightAt(bodies, {-0.4, 3}), 5.0, 1e-9);
  EXPECT_NEAR(heightAt(bodies, {5, -0.5}), 3.0, 1e-9);
  for (const SitePoint& corner : bodies[0].corners)
    EXPECT_TRUE(contains(building.footprint, corner.at));
  for (const SitePoint& corner : bodies[1].corners) EXPECT_GE(corner.up, 3.0 - 1e-12);
}

// The vertical shadow angle: tan = tan(altitude) / cos(azimuth difference) (IES definition); an
// overhang P shades the wall below it down by P times that.
TEST(EavesTest, NoonShadeOfAnEaveLiesItsOverhangFurtherOut) {
  Building building = house(rectangle({0, 0}, {10, 6}), Roof::Flat, 3, 3);
  building.overhang = Length::metres(0.8);
  Yard yard;
  yard.buildings = yard.buildings.with(building);
  const SunPosition sun{Angle::degrees(180), Angle::degrees(45)};
  const auto shadows = shadowsOf(solidsOf(yard), sun, std::chrono::June / 1);
  EXPECT_EQ(directShare(shadows, {5, 9.79}), 0.0);  // 6 + 0.8 + 3
  EXPECT_EQ(directShare(shadows, {5, 9.81}), 1.0);
  EXPECT_EQ(directShare(shadows, {-0.7, 5}), 0.0);  // under the side eave, 3 m up, from y 2 on
  EXPECT_EQ(directShare(shadows, {-0.7, 1}), 1.0);
}

TEST(FloatingTest, LightPassesUnderneath) {
  Building canopy = house(rectangle({0, 0}, {4, 4}), Roof::Flat, 3, 3);
  canopy.base = Length::metres(2.8);
  Yard yard;
  yard.settings.latitude = Angle::degrees(40);
  yard.buildings = yard.buildings.with(canopy);
  const SunPosition sun{Angle::degrees(180), Angle::degrees(45)};
  const auto shadows = shadowsOf(solidsOf(yard), sun, std::chrono::June / 1);
  EXPECT_EQ(directShare(shadows, {2, 2.7}), 1.0);
  EXPECT_EQ(directShare(shadows, {2, 2.9}), 0.0);
  EXPECT_EQ(directShare(shadows, {2, 6.9}), 0.0);
  EXPECT_EQ(directShare(shadows, {2, 7.1}), 1.0);
  SunMapRequest request;
  request.area = {{0, 0}, {4, 4}};
  request.cell = Length::metres(0.5);
  request.day = 2026y / 6 / 21;
  const auto map = computeSunMap(yard, request);
  EXPECT_FALSE(map->underBuilding(4, 4));  // open ground under a roof on posts
  EXPECT_GT(map->at(4, 4).total(), 1.0);
}

TEST(FloatingTest, BaseAboveTheRoofLeavesNothing) {
  Building canopy = house(rectangle({0, 0}, {4, 4}), Roof::Flat, 3, 3);
  canopy.base = Length::metres(3);
  EXPECT_TRUE(bodiesOf(canopy).empty());
}

// On ground that falls to the north by slope b, a pole of height H throws a shadow of
// H / (tan h - tan b) at noon; and H / (tan h + tan b) where it rises (trigonometry).
TEST(SlopeShadowTest, PoleThrowsALongerShadowDownhill) {
  for (const double aspect : {0.0, 180.0}) {
    Yard yard;
    yard.settings.slope = Angle::degrees(10);
    yard.settings.aspect = Angle::degrees(aspect);
    Tree pole;
    pole.id = Id<Tree>(2);
    pole.height = pole.crownBase = Length::metres(3);
    pole.trunkDiameter = Length::centimetres(2);
    yard.trees = yard.trees.with(pole);
    const SunPosition sun{Angle::degrees(180), Angle::degrees(40)};
    const double down = std::tan(Angle::degrees(10).radians()) * (aspect == 0.0 ? 1.0 : -1.0);
    const double length = 3.0 / (std::tan(sun.altitude.radians()) - down);
    const auto shadows = shadowsOf(solidsOf(yard), sun, std::chrono::June / 1);
    EXPECT_EQ(directShare(shadows, {0, length - 0.03}), 0.0) << aspect;
    EXPECT_EQ(directShare(shadows, {0, length + 0.03}), 1.0) << aspect;
  }
}

// Light that all but lies on the slope draws shadows out hundreds of times; none may reach uphill.
TEST(SlopeShadowTest, TrunkInGrazingLightShadesNothingTowardsTheSun) {
  Settings settings;
  settings.slope = Angle::degrees(10);
  settings.aspect = Angle::degrees(0);
  Yard yard;
  yard.settings = settings;
  Tree tree;
  tree.id = Id<Tree>(2);
  tree.trunkDiameter = Length::metres(0.6);
  tree.opennessLeaf = tree.opennessBare = 1.0;
  yard.trees = yard.trees.with(tree);
  const SunPosition sun{Angle::degrees(180), Angle::degrees(10.2)};
  const auto shadows =
      shadowsOf(solidsOf(yard), sun, MonthDay{std::chrono::June, std::chrono::day{21}});
  ASSERT_EQ(shadows.size(), 1u);
  const Box box = boundsOf(ringOf(shadows[0].outline));
  EXPECT_NEAR(box.low.y, -0.3, 0.005);
  EXPECT_NEAR(box.high.x, 0.3, 0.005);
  EXPECT_GT(box.high.y, 100.0);
}

TEST(SlopeShadowTest, BuildingStaysLevelAndReachesDown) {
  Building building = house(rectangle({-5, -3}, {5, 3}), Roof::Flat, 3, 3);
  const auto bodies = bodiesOf(building, {0.0, 0.1});  // rises to the north
  ASSERT_EQ(bodies.size(), 1u);
  for (const SitePoint& corner : bodies[0].corners)
    EXPECT_TRUE(corner.up == 0.0 || std::abs(corner.up - (3.0 - 0.1 * corner.at.y)) < 1e-9);
}

}  // namespace
}  // namespace tussock
