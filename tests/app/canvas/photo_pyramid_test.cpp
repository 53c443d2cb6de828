// SPDX-License-Identifier: MIT
#include "app/canvas/photo_pyramid.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(PhotoPyramid, TakesTheCoarsestLevelThatIsFineEnough) {
  const PhotoPyramid pyramid(QImage(4000, 3000, QImage::Format_RGB32));
  EXPECT_EQ(pyramid.levelFor(2.0), 0);
  EXPECT_EQ(pyramid.levelFor(1.0), 0);
  EXPECT_EQ(pyramid.levelFor(0.6), 0);
  EXPECT_EQ(pyramid.levelFor(0.5), 1);
  EXPECT_EQ(pyramid.levelFor(0.26), 1);
  EXPECT_EQ(pyramid.levelFor(0.25), 2);
  EXPECT_EQ(pyramid.levelFor(0.0001), pyramid.levels() - 1);
}

TEST(PhotoPyramid, EveryLevelShowsThePictureInItsPlace) {
  QImage picture(1600, 1200, QImage::Format_RGB32);
  picture.fill(Qt::white);
  for (int y = 600; y < 1200; ++y)
    for (int x = 800; x < 1600; ++x) picture.setPixel(x, y, qRgb(200, 0, 0));
  const PhotoPyramid pyramid(picture);
  for (const double scale : {1.0, 0.5, 0.25, 0.125}) {
    QImage shown(int(1600 * scale), int(1200 * scale), QImage::Format_RGB32);
    shown.fill(Qt::black);
    QPainter painter(&shown);
    painter.scale(scale, scale);
    pyramid.paint(painter, QRectF(0, 0, 1600, 1200), scale);
    painter.end();
    const auto at = [&](int x, int y) { return shown.pixel(int(x * scale), int(y * scale)); };
    EXPECT_EQ(qGreen(at(400, 300)), 255) << scale;
    EXPECT_EQ(at(1200, 900), qRgb(200, 0, 0)) << scale;
  }
}

}  // namespace
}  // namespace tussock
