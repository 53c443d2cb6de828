// SPDX-License-Identifier: MIT
#include "app/canvas/plan_frame.h"

#include <QPainter>

#include <gtest/gtest.h>

namespace tussock {
namespace {

struct Recorder {
  PlanFrame frame;
  QRegion painted;
  QImage show(const SceneMapping& mapping) {
    painted = {};
    return frame
        .picture(mapping, 1.0,
                 [&](QPainter& painter, const QRectF& part) {
                   painted += part.toRect();
                   painter.fillRect(QRectF(QPointF(), mapping.view()), Qt::white);
                   painter.fillRect(mapping.toPixels(Box{{1, 1}, {2, 2}}), Qt::red);
                 })
        .toImage();
  }
};

TEST(PlanFrame, PanningPaintsOnlyTheStripsThatComeIn) {
  Recorder recorder;
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(400, 300));
  recorder.show(mapping);
  EXPECT_EQ(recorder.painted, QRegion(0, 0, 400, 300));
  recorder.show(mapping);
  EXPECT_TRUE(recorder.painted.isEmpty());
  const SceneMapping panned = mapping.panned({30.0, -20.0});
  const QImage moved = recorder.show(panned);
  EXPECT_EQ(recorder.painted, QRegion(0, 0, 400, 300).subtracted(QRegion(30, -20, 400, 300)));
  EXPECT_EQ(recorder.frame.wholePaintings(), 1);
  EXPECT_EQ(moved, Recorder().show(panned));
}

TEST(PlanFrame, ZoomingPaintsAll) {
  Recorder recorder;
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(400, 300));
  recorder.show(mapping);
  recorder.show(mapping.zoomedAt({10, 10}, 1.5));
  EXPECT_EQ(recorder.painted, QRegion(0, 0, 400, 300));
}

TEST(PlanFrame, StretchesTheLastPictureToAnotherScale) {
  Recorder recorder;
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(400, 300));
  recorder.show(mapping);
  const SceneMapping nearer = mapping.zoomedAt({200, 150}, 1.5);
  QImage image(400, 300, QImage::Format_RGB32);
  QPainter painter(&image);
  ASSERT_TRUE(recorder.frame.paintStretched(painter, nearer, Qt::white));
  painter.end();
  EXPECT_EQ(image.pixelColor(nearer.toPixels(Point{1.5, 1.5}).toPoint()), QColor(Qt::red));
  EXPECT_EQ(image.pixelColor(nearer.toPixels(Point{0.9, 0.9}).toPoint()), QColor(Qt::white));
  EXPECT_EQ(recorder.frame.wholePaintings(), 1);
}

TEST(PlanFrame, StretchesNothingThatIsFarFromTheScaleOrNoLongerTrue) {
  Recorder recorder;
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(400, 300));
  QImage image(400, 300, QImage::Format_RGB32);
  QPainter painter(&image);
  EXPECT_FALSE(recorder.frame.paintStretched(painter, mapping, Qt::white));
  recorder.show(mapping);
  EXPECT_FALSE(recorder.frame.paintStretched(painter, mapping.zoomedAt({0, 0}, 9.0), Qt::white));
  recorder.frame.forget();
  EXPECT_FALSE(recorder.frame.paintStretched(painter, mapping.zoomedAt({0, 0}, 1.2), Qt::white));
}

}  // namespace
}  // namespace tussock
