// SPDX-License-Identifier: MIT
#include "app/look/glyphs.h"

#include <QImage>

#include <gtest/gtest.h>

#include "app/look/botanical.h"
#include "app/look/oklab.h"
#include "core/units/date.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

Species flowering(const char* name, FlowerForm form = FlowerForm::Daisy) {
  return test::species(name, "a test plant", Habit::Forb, form);
}
QImage drawn(const GlyphLook& look, int radius = 24) {
  return glyphSprite(look, radius, 1.0).toImage().convertToFormat(QImage::Format_ARGB32);
}
int countOf(const QImage& image, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == colour.rgb();
  return count;
}

TEST(Glyphs, FlowersShowInTheirWeeksOnly) {
  const Species aster = flowering("Aster novi");
  const int august = weekOf(std::chrono::August / 15), may = weekOf(std::chrono::May / 15);
  const GlyphLook inFlower = glyphLook(aster, august, false), green = glyphLook(aster, may, false);
  EXPECT_TRUE(inFlower.inFlower);
  EXPECT_FALSE(green.inFlower);
  EXPECT_GT(countOf(drawn(inFlower), inFlower.flower), 20);
  EXPECT_EQ(countOf(drawn(green), inFlower.flower), 0);
}

TEST(Glyphs, WithoutAWeekEverySpeciesFlowers) {
  EXPECT_TRUE(glyphLook(flowering("Aster novi"), std::nullopt, false).inFlower);
  Species bare = flowering("Aster novi", FlowerForm::None);  // a colour in words alone
  bare.flowerColour.reset(), bare.flowerColourWord = "yellow";
  EXPECT_TRUE(glyphLook(bare, std::nullopt, false).inFlower);
  EXPECT_EQ(glyphLook(bare, std::nullopt, false).form, FlowerForm::Daisy);
}

TEST(Glyphs, LeavesAreGreenInJuneAndStrawInJanuary) {
  const Species aster = flowering("Aster novi");
  const Oklab june = toOklab(glyphLook(aster, weekOf(std::chrono::June / 10), false).foliage);
  const Oklab january = toOklab(glyphLook(aster, 1, false).foliage);
  EXPECT_LT(june.a, -0.02) << "green";
  EXPECT_GT(january.a, june.a + 0.02);
  EXPECT_GT(january.b, 0.04) << "straw";
}

// Seen from far off a plant in flower is a blot of its colour, on which a dark dot stands out.
TEST(Glyphs, TheCentreIsDarkOnLightAndOnBlotsOfBloomElseLightOnDark) {
  for (const FlowerForm form : {FlowerForm::None, FlowerForm::Daisy, FlowerForm::Globe}) {
    for (const int radius : {5, 10, 30}) {
      const Species plant = flowering("Aster novi", form);
      const GlyphLook light = glyphLook(plant, std::nullopt, false);
      const GlyphLook dark = glyphLook(plant, std::nullopt, true);
      EXPECT_LT(QColor(drawn(light, radius).pixel(radius, radius)).lightness(), 110);
      const int onDark = QColor(drawn(dark, radius).pixel(radius, radius)).lightness();
      if (radius < 6)
        EXPECT_LT(onDark, 110);
      else
        EXPECT_GT(onDark, 145);
    }
  }
}

TEST(Glyphs, NeighboursOfOneHabitLookDifferent) {
  const GlyphLook a = glyphLook(flowering("Monarda fistulosa", FlowerForm::None), 24, false);
  const GlyphLook b = glyphLook(flowering("Liatris spicata", FlowerForm::None), 24, false);
  EXPECT_NE(a.foliage, b.foliage);
  EXPECT_NE(drawn(a), drawn(b));
}

TEST(Glyphs, NothingIsDrawnOutsideTheSpread) {
  for (const Habit habit : {Habit::Forb, Habit::Grass, Habit::Sedge, Habit::Fern, Habit::Shrub,
                            Habit::Vine, Habit::Bulb}) {
    const Species plant = test::species("Planta probata", "a test plant", habit, FlowerForm::Plume);
    QImage image(140, 140, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    paintGlyph(painter, {70, 70}, 40, glyphLook(plant, std::nullopt, false));
    painter.end();
    double farthest = 0.0;
    for (int y = 0; y < 140; ++y)
      for (int x = 0; x < 140; ++x)
        if (qAlpha(image.pixel(x, y)) > 0)
          farthest = std::max(farthest, std::hypot(x - 69.5, y - 69.5));
    EXPECT_LE(farthest, 40 * 1.1) << wordOf(habit);
    EXPECT_GE(farthest, 40 * 0.8) << wordOf(habit);
  }
}

TEST(Glyphs, ASpriteIsDrawnOnceForALookAndSize) {
  const GlyphLook look = glyphLook(flowering("Aster novi"), std::nullopt, false);
  const qint64 first = glyphSprite(look, 17, 2.0).cacheKey();
  EXPECT_EQ(glyphSprite(look, 17, 2.0).cacheKey(), first);
  EXPECT_NE(glyphSprite(look, 18, 2.0).cacheKey(), first);
  EXPECT_EQ(glyphSprite(look, 17, 2.0).size(), QSize(68, 68));
}

// ICNCP 9th ed.: cultivar epithets stand in single quotes and are not italic.
TEST(Botanical, CultivarsAndRanksStandUpright) {
  EXPECT_EQ(botanicalHtml(QStringLiteral("Symphyotrichum laeve 'Bluebird'")),
            QStringLiteral("<i>Symphyotrichum laeve</i> 'Bluebird'"));
  EXPECT_EQ(botanicalHtml(QStringLiteral("Aquilegia canadensis var. latiuscula")),
            QStringLiteral("<i>Aquilegia canadensis</i> var. <i>latiuscula</i>"));
}

}  // namespace
}  // namespace tussock
