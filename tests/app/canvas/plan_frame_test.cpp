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

}  // namespace
}  // namespace tussock
