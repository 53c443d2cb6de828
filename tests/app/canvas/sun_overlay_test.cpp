// SPDX-License-Identifier: MIT
// Hours of sun on the canvas: what is seen is the map laid over the plan, and its key the ramp.
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
       {Point{8.375, 2.125}, Point{4.0, 6.5}, Point{-5.0, -2.3}, Point{13.0, -2.0}}) {
    const double hours = map->hoursAt(at)->total();
    least = std::min(least, hours), most = std::max(most, hours);
    expectNear(sunny.pixelColor(pixels(at)), over(sunColour(hours), plan.pixelColor(pixels(at))),
               std::to_string(at.x) + ", " + std::to_string(at.y) + ": " + std::to_string(hours));
  }
  // Beside a house there is shade, in the open there is none.
  EXPECT_LT(least, 7.5);
  EXPECT_GT(most, 9.0);
  key(Qt::Key_U);
  EXPECT_EQ(shown(), plan);
}

TEST_F(SunOverlayTest, TheKeyRunsFromNoSunToTheTopOfTheScale) {
  startShaded();
  key(Qt::Key_U);
  auto* legend = window->findChild<SunLegend*>();
  ASSERT_TRUE(legend && legend->isVisible());
  const QImage image = legend->grab().toImage();
  const QRectF ramp = legend->ramp();
  for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
    const QPointF at(ramp.left() + share * (ramp.width() - 1), ramp.center().y());
    expectNear(image.pixelColor(at.toPoint()), sunColour(share * kSunScaleTop),
               std::to_string(share));
  }
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
