// SPDX-License-Identifier: MIT
// What a plan shows of a roof.
#include <gtest/gtest.h>

#include "app/canvas/items.h"

namespace tussock {
namespace {

constexpr double kScale = 30.0;

QImage drawn(const Building& building) {
  QImage image(600, 600, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  CanvasLook look;
  look.theme = Theme::light();
  makeBuildingItem(building)->paint(painter, SceneMapping({6.0, 5.0}, kScale, QSizeF(600, 600)),
                                    look);
  return image;
}

Building ell() {
  Building building;
  building.footprint = {{{0, 0}, {12, 0}, {12, 4}, {6, 4}, {6, 10}, {0, 10}}, {}};
  building.roof = Roof::Gable;
  building.eave = Length::metres(3);
  building.ridge = Length::metres(6);
  return building;
}

// The darkest pixel near a place.
int darkest(const QImage& image, Point p) {
  int least = 255;
  for (int y = -2; y <= 2; ++y)
    for (int x = -2; x <= 2; ++x)
      least = std::min(
          least,
          image.pixelColor(int(300 + (p.x - 6.0) * kScale) + x, int(300 - (p.y - 5.0) * kScale) + y)
              .lightness());
  return least;
}

TEST(BuildingItem, AnEllHasARidgeOnEachLegAndTheirValleys) {
  const QImage image = drawn(ell());
  const int roof = darkest(image, {1.0, 6.0});
  for (const Point p : {Point{3, 8}, {9, 2}, {5, 3}, {5, 1}})
    EXPECT_LT(darkest(image, p), roof - 30) << p.x << ", " << p.y;
  EXPECT_EQ(darkest(image, {3.5, 2.0}), roof) << "under the other roof";
}

TEST(BuildingItem, EavesAreDrawnWhereTheyReachPastTheWalls) {
  Building building = ell();
  const QImage without = drawn(building);
  EXPECT_EQ(darkest(without, {-0.5, 5.0}), 255);
  building.overhang = Length::metres(0.5);
  const QImage with = drawn(building);
  int least = 255;
  for (double y = 4.0; y < 6.0; y += 0.05) least = std::min(least, darkest(with, {-0.5, y}));
  EXPECT_LT(least, 180);
}

}  // namespace
}  // namespace tussock
