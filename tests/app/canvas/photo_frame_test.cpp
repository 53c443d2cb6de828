// SPDX-License-Identifier: MIT
#include "app/canvas/photo_frame.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

Photo photo() {
  Photo made;
  made.widthPixels = 400;
  made.heightPixels = 300;
  made.corner = {10.0, 20.0};
  made.metresPerPixel = 0.05;
  return made;
}
Point placeOf(const Photo& shown, double x, double y) {
  const QPointF at = photoTransform(shown).map(QPointF(x, y));
  return {at.x(), at.y()};
}

TEST(PhotoTransform, RowsRunSouthFromTheCorner) {
  EXPECT_EQ(placeOf(photo(), 0, 0), (Point{10.0, 20.0}));
  EXPECT_NEAR(placeOf(photo(), 400, 0).x, 30.0, 1e-9);
  EXPECT_NEAR(placeOf(photo(), 0, 300).y, 5.0, 1e-9);
}

TEST(ScaledByTwoPoints, MakesTheDistanceTrueAndKeepsTheFirstPoint) {
  const Point a = placeOf(photo(), 100, 100), b = placeOf(photo(), 300, 100);
  const Photo scaled = scaledByTwoPoints(photo(), a, b, Length::feet(24.5));
  const Point a2 = placeOf(scaled, 100, 100), b2 = placeOf(scaled, 300, 100);
  EXPECT_NEAR(distance(a2, b2), 24.5 * 0.3048, 1e-9);
  EXPECT_NEAR(distance(a, a2), 0.0, 1e-9);
}

TEST(Turned, LeadsALineOfThePhotoToNorth) {
  const Point a = placeOf(photo(), 100, 200), b = placeOf(photo(), 250, 120);
  const Photo north = turned(photo(), azimuthOf(b - a), a);
  const Point step = placeOf(north, 250, 120) - placeOf(north, 100, 200);
  EXPECT_NEAR(step.x, 0.0, 1e-9);
  EXPECT_GT(step.y, 0.0);
  EXPECT_NEAR(distance(placeOf(north, 100, 200), a), 0.0, 1e-9);
}

}  // namespace
}  // namespace tussock
