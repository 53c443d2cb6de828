// SPDX-License-Identifier: MIT
#include "app/look/silhouette.h"

#include <QImage>

#include <gtest/gtest.h>

#include "tests/app/open_yard.h"

namespace tussock {
namespace {

constexpr int kFoot = 280, kMiddle = 200;
constexpr double kScale = 200.0;  // pixels a metre

QImage drawn(const Silhouette& plant) {
  QImage image(400, 300, QImage::Format_ARGB32);
  image.fill(Qt::transparent);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paintSilhouette(painter, QPointF(kMiddle, kFoot), kScale, plant);
  return image;
}
// The rows and columns that hold ink.
QRect inkOf(const QImage& image) {
  QRect ink;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (qAlpha(image.pixel(x, y)) > 60) ink |= QRect(x, y, 1, 1);
  return ink;
}
// Thin strokes are blended with what lies under them, so near the colour counts.
int countNear(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const QColor pixel = image.pixelColor(x, y);
      const int apart = std::abs(pixel.red() - colour.red()) +
                        std::abs(pixel.green() - colour.green()) +
                        std::abs(pixel.blue() - colour.blue());
      count += pixel.alpha() > 60 && apart < 90;
    }
  return count;
}

class EveryForm : public testing::TestWithParam<std::tuple<Habit, FlowerForm>> {
 protected:
  [[nodiscard]] static Species plant() {
    const auto [habit, form] = GetParam();
    return test::species("Aster novi", "a test plant", habit, form);
  }
};

// 0.9 m high at 200 pixels a metre is 180 pixels; a stroke's own width may show beyond.
TEST_P(EveryForm, StandsOnItsFootAndReachesItsHeight) {
  const QRect ink = inkOf(drawn(silhouetteOf(plant(), std::nullopt, false)));
  EXPECT_NEAR(ink.bottom(), kFoot, 4);
  EXPECT_NEAR(ink.top(), kFoot - 180, std::get<1>(GetParam()) == FlowerForm::None ? 30 : 8);
  EXPECT_NEAR(ink.center().x(), kMiddle, 12);
  EXPECT_LE(ink.width(), 2.2 * 0.4 * kScale);
  EXPECT_GE(ink.width(), 0.4 * 0.4 * kScale);
}

TEST_P(EveryForm, ShowsItsFlowersInTheirWeeksOnly) {
  if (std::get<1>(GetParam()) == FlowerForm::None) return;
  const Silhouette august = silhouetteOf(plant(), weekOf(std::chrono::August / 15), false);
  const Silhouette may = silhouetteOf(plant(), weekOf(std::chrono::May / 15), false);
  const QColor flower = august.look.flower;
  EXPECT_GT(countNear(drawn(august), flower), 20);
  EXPECT_EQ(countNear(drawn(may), flower), 0);
}

INSTANTIATE_TEST_SUITE_P(
    Plants, EveryForm,
    testing::Combine(testing::Values(Habit::Forb, Habit::Grass, Habit::Sedge, Habit::Fern,
                                     Habit::Shrub, Habit::Vine, Habit::Bulb),
                     testing::Values(FlowerForm::None, FlowerForm::Daisy, FlowerForm::Spire,
                                     FlowerForm::Umbel, FlowerForm::Globe, FlowerForm::Bell,
                                     FlowerForm::Plume)));

TEST(Silhouette, APlantWithoutHeightDrawsNothing) {
  Species flat = test::species("Aster novi", "a test plant", Habit::Forb, FlowerForm::Daisy);
  flat.heightLow = flat.heightHigh = Length();
  EXPECT_TRUE(inkOf(drawn(silhouetteOf(flat, std::nullopt, false))).isEmpty());
}

TEST(Silhouette, HasItsLeavesAsHighAsThePlantFactsSay) {
  Species star = test::species("Liatris nova", "a test plant", Habit::Forb, FlowerForm::Spire);
  star.foliageLow = Length::centimetres(20), star.foliageHigh = Length::centimetres(40);
  star.body = Body::SeeThrough;
  const Silhouette drawn = silhouetteOf(star, std::nullopt, false);
  EXPECT_NEAR(drawn.foliage.metres(), 0.3, 1e-9);
  EXPECT_TRUE(drawn.seeThrough);
  star.foliageLow = star.foliageHigh = Length::centimetres(400);
  EXPECT_EQ(silhouetteOf(star, std::nullopt, false).foliage, star.height());
}

}  // namespace
}  // namespace tussock
