// SPDX-License-Identifier: MIT
#include "app/canvas/drift_picture.h"

#include <algorithm>
#include <cmath>
#include <QImage>

#include <gtest/gtest.h>

namespace tussock {
namespace {

struct Page {
  QImage image{200, 150, QImage::Format_ARGB32_Premultiplied};
  Page() { image.fill(Qt::white); }
};

// A soft disc of half a metre, and how often it was asked for.
struct Disc {
  DriftPicture picture;
  DriftPicture::Look look;
  int painted = 0;

  static void draw(QPainter& painter, const SceneMapping& mapping) {
    painter.setPen(QPen(QColor(0, 0, 0, 77), 0.8));
    painter.setBrush(QColor(180, 60, 140, 61));
    painter.drawEllipse(mapping.toPixels(Point{1.0, 1.0}), mapping.pixels(0.5),
                        mapping.pixels(0.5));
  }
  QImage lay(const SceneMapping& mapping) {
    Page sheet;
    QPainter painter(&sheet.image);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = mapping.toPixels(Box{{0.4, 0.4}, {1.6, 1.6}});
    picture.lay(painter, box, mapping, look, [this](QPainter& on, const SceneMapping& there) {
      ++painted;
      draw(on, there);
    });
    painter.end();
    return sheet.image;
  }
};

QImage drawnDirectly(const SceneMapping& mapping) {
  Page sheet;
  QPainter painter(&sheet.image);
  painter.setRenderHint(QPainter::Antialiasing);
  Disc::draw(painter, mapping);
  painter.end();
  return sheet.image;
}

int mostDifference(const QImage& a, const QImage& b) {
  int most = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) {
      const QColor p = a.pixelColor(x, y), q = b.pixelColor(x, y);
      most = std::max({most, std::abs(p.red() - q.red()), std::abs(p.green() - q.green()),
                       std::abs(p.blue() - q.blue())});
    }
  return most;
}

const SceneMapping kMapping(Point{1.13, 0.87}, 40.3, QSizeF(200, 150));

TEST(DriftPicture, LooksLikePaintingDirectly) {
  Disc disc;
  EXPECT_LE(mostDifference(disc.lay(kMapping), drawnDirectly(kMapping)), 2);
}

TEST(DriftPicture, IsPaintedOnceWhilePanningByWholePixels) {
  Disc disc;
  (void)disc.lay(kMapping);
  const SceneMapping panned = kMapping.panned({17.0, -9.0});
  EXPECT_LE(mostDifference(disc.lay(panned), drawnDirectly(panned)), 2);
  EXPECT_EQ(disc.painted, 1);
}

TEST(DriftPicture, IsPaintedAgainAtAnotherScaleLookOrPartOfAPixel) {
  Disc disc;
  (void)disc.lay(kMapping);
  const SceneMapping nearer = kMapping.zoomedAt({100, 75}, 1.3);
  EXPECT_LE(mostDifference(disc.lay(nearer), drawnDirectly(nearer)), 2);
  EXPECT_EQ(disc.painted, 2);
  const SceneMapping half = nearer.panned({0.5, 0.0});
  EXPECT_LE(mostDifference(disc.lay(half), drawnDirectly(half)), 2);
  EXPECT_EQ(disc.painted, 3);
  disc.look.radius = 0.3;
  (void)disc.lay(half);
  EXPECT_EQ(disc.painted, 4);
}

TEST(DriftPicture, OfALargeDriftIsNotKept) {
  Disc disc;
  const SceneMapping close = kMapping.zoomedAt({100, 75}, 5.0);
  (void)disc.lay(close);
  EXPECT_EQ(mostDifference(disc.lay(close), drawnDirectly(close)), 0);
  EXPECT_EQ(disc.painted, 2);
}

}  // namespace
}  // namespace tussock
