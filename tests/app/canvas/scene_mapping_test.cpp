// SPDX-License-Identifier: MIT
#include "app/canvas/scene_mapping.h"

#include <gtest/gtest.h>

namespace tussock {
namespace {

TEST(SceneMapping, NorthIsUpAndEastIsRight) {
  const SceneMapping mapping(Point{10.0, 20.0}, 50.0, QSizeF(800, 600));
  EXPECT_EQ(mapping.toPixels(Point{10.0, 20.0}), QPointF(400, 300));
  EXPECT_EQ(mapping.toPixels(Point{11.0, 20.0}), QPointF(450, 300));
  EXPECT_EQ(mapping.toPixels(Point{10.0, 21.0}), QPointF(400, 250));
}

TEST(SceneMapping, GoesThereAndBack) {
  const SceneMapping mapping(Point{-3.25, 7.5}, 37.0, QSizeF(1001, 777));
  for (const Point p : {Point{0, 0}, Point{-3.25, 7.5}, Point{12.34, -56.78}}) {
    const Point back = mapping.toSite(mapping.toPixels(p));
    EXPECT_NEAR(back.x, p.x, 1e-9);
    EXPECT_NEAR(back.y, p.y, 1e-9);
  }
}

TEST(SceneMapping, TransformAgreesWithPoints) {
  const SceneMapping mapping(Point{2.0, 3.0}, 25.0, QSizeF(640, 480));
  const QPointF mapped = mapping.transform().map(QPointF(5.0, -1.0));
  EXPECT_NEAR(mapped.x(), mapping.toPixels(Point{5.0, -1.0}).x(), 1e-9);
  EXPECT_NEAR(mapped.y(), mapping.toPixels(Point{5.0, -1.0}).y(), 1e-9);
}

TEST(SceneMapping, ZoomKeepsThePointUnderThePointer) {
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(800, 600));
  const QPointF at(123.0, 456.0);
  const Point before = mapping.toSite(at);
  const SceneMapping zoomed = mapping.zoomedAt(at, 1.7);
  EXPECT_NEAR(zoomed.scale(), 68.0, 1e-9);
  EXPECT_NEAR(zoomed.toSite(at).x, before.x, 1e-9);
  EXPECT_NEAR(zoomed.toSite(at).y, before.y, 1e-9);
}

TEST(SceneMapping, ZoomStopsAtItsLimits) {
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(800, 600));
  EXPECT_EQ(mapping.zoomedAt({}, 1e9).scale(), SceneMapping::kMostScale);
  EXPECT_EQ(mapping.zoomedAt({}, 1e-9).scale(), SceneMapping::kLeastScale);
}

TEST(SceneMapping, FitShowsAllOfABox) {
  Box box;
  box.include(Point{-5.0, 2.0});
  box.include(Point{15.0, 6.0});
  const SceneMapping fitted = SceneMapping(Point{0, 0}, 40.0, QSizeF(800, 600)).fitted(box, 50.0);
  const QRectF shown = fitted.toPixels(box);
  EXPECT_NEAR(shown.left(), 50.0, 1e-6);
  EXPECT_NEAR(shown.right(), 750.0, 1e-6);
  EXPECT_NEAR(shown.center().y(), 300.0, 1e-6);
}

TEST(SceneMapping, PanMovesTheDrawingWithThePointer) {
  const SceneMapping mapping(Point{0, 0}, 40.0, QSizeF(800, 600));
  const QPointF before = mapping.toPixels(Point{1.0, 1.0});
  EXPECT_EQ(mapping.panned({30.0, -20.0}).toPixels(Point{1.0, 1.0}), before + QPointF(30, -20));
}

}  // namespace
}  // namespace tussock
