// SPDX-License-Identifier: MIT
// How dark the ground is drawn, against the share of the sun that the engine lets through.
#include "app/canvas/shadow_overlay.h"

#include <gtest/gtest.h>

#include "core/sun/shade.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

constexpr double kScale = 20.0;     // pixels a metre
constexpr int kShadowRounding = 2;  // of 255

// Screens from west to east at y = 0, the sun in the south: their shadows lie north of them.
class ShadowOverlayTest : public testing::Test {
 protected:
  void screen(double y, double openness) {
    Barrier each;
    each.id = ids.take<Barrier>();
    each.kind = BarrierKind::Fence;
    each.line = {{-4.0, y}, {4.0, y}};
    each.height = Length::metres(3);
    each.thickness = Length::centimetres(5);
    each.openness = openness;
    yard.barriers = yard.barriers.with(each);
  }
  [[nodiscard]] QImage painted(const SunPosition& sun, const Theme& theme = Theme::light()) const {
    const SceneMapping mapping({0.0, 0.0}, kScale, QSizeF(400, 400));
    QImage image(400, 400, QImage::Format_RGB32);
    image.fill(theme.dark ? theme.paper : QColor(Qt::white));
    ShadowOverlay overlay;
    overlay.take(yard, sun, std::chrono::June / 21);
    QPainter painter(&image);
    CanvasLook look;
    look.theme = theme;
    overlay.paint(painter, mapping, look);
    return image;
  }
  // Of white paper, at metres.
  static int darkness(const QImage& image, Point at) {
    return 255 - image.pixelColor(int(200 + at.x * kScale), int(200 - at.y * kScale)).green();
  }

  IdSource ids{2};
  Yard yard = test::YardBuilder().build();
  const SunPosition south{Angle::degrees(180), Angle::degrees(45)};
};

TEST_F(ShadowOverlayTest, TwoWallsShadeNoMoreThanOne) {
  screen(0.0, 0.0);
  screen(-1.0, 0.0);
  const QImage image = painted(south);
  const int once = darkness(image, {0.0, 2.6}), twice = darkness(image, {0.0, 1.2});
  EXPECT_GT(once, 60);
  EXPECT_NEAR(twice, once, kShadowRounding);
}

TEST_F(ShadowOverlayTest, HalfOpenScreensLetThroughTheProduct) {
  screen(0.0, 0.5);
  screen(-1.0, 0.5);
  const QImage half = painted(south);
  const int once = darkness(half, {0.0, 2.6}), twice = darkness(half, {0.0, 1.2});
  const auto shadows = shadowsOf(solidsOf(yard), south, std::chrono::June / 21);
  ASSERT_DOUBLE_EQ(directShare(shadows, {0.0, 2.6}), 0.5);
  ASSERT_DOUBLE_EQ(directShare(shadows, {0.0, 1.2}), 0.25);
  screen(-1.0, 0.0);
  const int full = darkness(painted(south), {0.0, 1.2});
  EXPECT_NEAR(once, full * 0.5, kShadowRounding);
  EXPECT_NEAR(twice, full * 0.75, kShadowRounding);
}

TEST_F(ShadowOverlayTest, ShadeIsDarkerThanSunInTheDarkThemeToo) {
  screen(0.0, 0.0);
  screen(-8.0, 0.5);
  const QImage day = painted(south, Theme::darkTheme());
  const int lit = darkness(day, {0.0, -2.0}), half = darkness(day, {0.0, -6.0}),
            shaded = darkness(day, {0.0, 1.5});
  EXPECT_GE(half, lit + 8);
  EXPECT_GE(shaded, half + 8);
  EXPECT_NEAR(darkness(painted({Angle(), Angle::degrees(-10)}, Theme::darkTheme()), {0.0, -2.0}),
              shaded, kShadowRounding);
}

TEST_F(ShadowOverlayTest, RoofsAreLitByDayAndDarkByNight) {
  yard.buildings = test::YardBuilder()
                       .building("Shed", "POLYGON((-2 -2, 2 -2, 2 2, -2 2, -2 -2))")
                       .build()
                       .buildings;
  EXPECT_EQ(darkness(painted(south), {0.0, 0.0}), 0);
  const QImage night = painted({Angle::degrees(0), Angle::degrees(-10)});
  EXPECT_GT(darkness(night, {0.0, 0.0}), 60);
  EXPECT_EQ(darkness(night, {0.0, 0.0}), darkness(night, {5.0, 5.0}));
}

}  // namespace
}  // namespace tussock
