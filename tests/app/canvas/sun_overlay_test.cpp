// SPDX-License-Identifier: MIT
// Hours of sun on the canvas: what is seen is the map laid over the plan, and its key the same over
// open ground.
#include "app/canvas/sun_overlay.h"

#include <gtest/gtest.h>

#include "app/look/sun_scale.h"
#include "app/panels/sun_legend.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

constexpr double kStrength = 0.66;  // of the map over the plan
constexpr int kRounding = 6;        // of 255: hours are shown in tenths and cells blend

class SunOverlayTest : public test::WindowTest {
 protected:
  // A tall house with open ground all round, seen whole.
  void startShaded() {
    start(test::YardBuilder()
              .bed("Ground", "POLYGON((-8 -8, 16 -8, 16 16, -8 16, -8 -8))")
              .building("House", "POLYGON((0 0, 8 0, 8 4, 0 4, 0 0))")
              .build());
    document.waitForAnalysis();
    canvas().sunView().waitForMap();
    lookAt({4.0, 3.0}, 20.0);  // not the whole: that moves when the strip shows
  }
  [[nodiscard]] QImage shown() const { return canvas().grab().toImage(); }
  static void expectNear(QColor a, QColor b, const std::string& where) {
    EXPECT_NEAR(a.red(), b.red(), kRounding) << where;
    EXPECT_NEAR(a.green(), b.green(), kRounding) << where;
    EXPECT_NEAR(a.blue(), b.blue(), kRounding) << where;
  }
  static QColor over(QColor sun, QColor plan) {
    const auto mix = [](int a, int b) {
      return int(std::lround(a * kStrength + b * (1 - kStrength)));
    };
    return {mix(sun.red(), plan.red()), mix(sun.green(), plan.green()),
            mix(sun.blue(), plan.blue())};
  }
};

TEST_F(SunOverlayTest, PixelsAreTheHoursOfTheMapOverThePlan) {
  startShaded();
  const QImage plan = shown();
  key(Qt::Key_U);
  ASSERT_EQ(canvas().sunView().choice().look, SunLook::Hours);
  const QImage sunny = shown();
  const auto map = document.sunMap();
  ASSERT_TRUE(map);
  double least = 24.0, most = 0.0;
  // Off the contour at 6 h and its label, in the middle of cells that differ little from the next.
  for (const Point at :
       {Point{8.375, 2.125}, Point{4.0, 6.5}, Point{-5.0, 2.3}, Point{13.0, -2.0}}) {
    const double hours = map->hoursAt(at)->total();
    least = std::min(least, hours), most = std::max(most, hours);
    expectNear(sunny.pixelColor(pixels(at)), over(sunColour(hours), plan.pixelColor(pixels(at))),
               std::to_string(at.x) + ", " + std::to_string(at.y) + ": " + std::to_string(hours));
  }
  // Beside a house there is shade, in the open there is none.
  EXPECT_LT(least, 7.5);
  EXPECT_GT(most, 9.0);
  key(Qt::Key_U);
  // Without the scale bar, whose outlined figures the font engine rounds by what it drew before.
  const QRect drawing = plan.rect().adjusted(0, 0, 0, -60);
  EXPECT_EQ(shown().copy(drawing), plan.copy(drawing));
}

// Of a lot without a bed, so that open ground is what lies under the map.
TEST_F(SunOverlayTest, TheKeyHasTheColoursThatAreSeenInLightAndDark) {
  Yard yard = test::YardBuilder().building("House", "POLYGON((0 0, 8 0, 8 4, 0 4, 0 0))").build();
  LotLine lot;
  lot.id = Id<LotLine>(900);
  lot.outline = {{{-8.0, -8.0}, {16.0, -8.0}, {16.0, 16.0}, {-8.0, 16.0}}, {}};
  yard.lotLines = yard.lotLines.with(lot);
  start(yard);
  for (const char* theme : {"actionThemeDark", "actionThemeLight"}) {
    trigger(theme);
    lookAt({4.0, 3.0}, 20.0);
    if (canvas().sunView().choice().look != SunLook::Hours) key(Qt::Key_U);
    canvas().sunView().waitForMap();
    auto* legend = window->findChild<SunLegend*>();
    ASSERT_TRUE(legend && legend->isVisible());
    const QImage key = legend->grab().toImage();
    const QImage seen = shown();
    const QRectF ramp = legend->ramp();
    for (const Point at : {Point{4.3, 6.6}, Point{-5.2, 2.3}, Point{13.2, -2.2}}) {
      const double hours = *canvas().sunView().grid().hoursAt(at);
      const QPointF place(ramp.left() + hours / kSunScaleTop * (ramp.width() - 1),
                          ramp.center().y());
      expectNear(seen.pixelColor(pixels(at)), key.pixelColor(place.toPoint()),
                 std::to_string(hours));
    }
  }
}

// Cells of the map are in whole metres and reach past a lot that is not.
TEST_F(SunOverlayTest, NothingIsLaidBeyondTheLot) {
  Yard yard = test::YardBuilder().build();
  LotLine lot;
  lot.id = Id<LotLine>(900);
  lot.outline = {{{0.0, 0.0}, {8.4, 0.0}, {8.4, 6.3}, {0.0, 6.3}}, {}};
  yard.lotLines = yard.lotLines.with(lot);
  start(yard);
  document.waitForAnalysis();
  canvas().sunView().waitForMap();
  lookAt({4.0, 3.0}, 40.0);
  const QImage before = shown();
  key(Qt::Key_U);
  canvas().sunView().waitForMap();
  const QImage after = shown();
  for (const Point out : {Point{8.7, 3.3}, {4.3, 6.65}, {-0.3, 3.3}})
    EXPECT_EQ(after.pixelColor(pixels(out)), before.pixelColor(pixels(out)))
        << out.x << ", " << out.y;
  EXPECT_NE(after.pixelColor(pixels({8.2, 3.3})), before.pixelColor(pixels({8.2, 3.3})));
}

// A straight line 40 m long, at 30 pixels a metre.
TEST(SunOverlayLabels, ALongLineIsLabelledAgainAndAgainClearOfOtherWords) {
  HourGrid grid{Box{{0.0, 0.0}, {40.0, 4.0}}, 0.5, 80, 8, {}};
  for (int row = 0; row < 8; ++row)
    for (int column = 0; column < 80; ++column) grid.hours.push_back(row < 4 ? 5.0F : 7.0F);
  SunOverlay overlay;
  overlay.take(grid, {"", "", 6.0, 3.0}, grid.area);
  QImage image(1200, 200, QImage::Format_RGB32);
  QPainter painter(&image);
  const SceneMapping mapping({20.0, 2.0}, 30.0, QSizeF(1200, 200));
  overlay.paint(painter, mapping, CanvasLook(), {});
  ASSERT_EQ(overlay.labels().size(), 2u);
  const QRectF words = overlay.labels()[0].box.adjusted(-20, -20, 20, 20);
  overlay.paint(painter, mapping, CanvasLook(), {words});
  ASSERT_EQ(overlay.labels().size(), 2u) << "moved along the line";
  for (const PlacedLabel& label : overlay.labels()) EXPECT_FALSE(label.box.intersects(words));
}

TEST_F(SunOverlayTest, NothingIsLaidOverABuilding) {
  startShaded();
  const QPoint inside = pixels({1.5, 0.8});
  const QColor roof = shown().pixelColor(inside);
  key(Qt::Key_U);
  EXPECT_EQ(shown().pixelColor(inside), roof);
}

}  // namespace
}  // namespace tussock
