// SPDX-License-Identifier: MIT
// The sun map on paper: its cells lie where the yard is drawn, and its words are whole.
#include "app/print/sun_picture.h"

#include <QImage>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/look/sun_scale.h"
#include "app/look/theme.h"
#include "tests/support/yard_builder.h"

namespace tussock {
namespace {

constexpr int kLeft = 24, kTop = 64;  // pixels of the map's corner

class SunPicture : public testing::Test {
 protected:
  [[nodiscard]] QImage drawn(const SunMap& map, const Yard& yard,
                             std::vector<SunNote> notes = {}) const {
    const QString path = dir.filePath(QStringLiteral("sun.png"));
    writeSunPicture(map, yard, {"Yard", "a day", std::move(notes), sunProfile("usual")}, path);
    return QImage(path);
  }
  QTemporaryDir dir;
};

int apart(QColor a, QColor b) {
  return std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) +
         std::abs(a.blue() - b.blue());
}

// Around all pixels that differ.
QRect difference(const QImage& a, const QImage& b) {
  QRect around;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x)
      if (a.pixel(x, y) != b.pixel(x, y)) around |= QRect(x, y, 1, 1);
  return around;
}

// 10.5 m in cells of 1 m: eleven columns, of which the last reaches beyond the ground.
TEST_F(SunPicture, CellsLieWhereTheyWereCounted) {
  SunMap map(Box{{0.0, 0.0}, {10.5, 10.5}}, Length::metres(1), 11, 11);
  for (int row = 0; row < 11; ++row)
    for (int column = 0; column < 11; ++column)
      map.set(column, row, {column < 8 ? 0.0 : 10.0, 0.0});
  const QImage image = drawn(map, test::YardBuilder().build());
  const double pixels = 1400 / 10.5;
  const auto at = [&](double x) {
    return image.pixelColor(int(kLeft + x * pixels), int(kTop + 5.0 * pixels));
  };
  EXPECT_LT(apart(at(7.2), sunColour(0.0)), 30) << "no sun west of 8 m";
  EXPECT_LT(apart(at(8.8), sunColour(10.0)), 30) << "full sun east of it";
}

// Hours rise evenly from west to east: the limits, 3 and 6 h, run north and south there.
TEST_F(SunPicture, LimitsOfTheClassesAreDrawn) {
  SunMap map(Box{{0.0, 0.0}, {10.0, 10.0}}, Length::metres(0.5), 20, 20);
  for (int row = 0; row < 20; ++row)
    for (int column = 0; column < 20; ++column) map.set(column, row, {column * 0.5 + 0.25, 0.0});
  const QImage image = drawn(map, test::YardBuilder().build());
  const auto spread = [&](double x) {  // of lightness, a few pixels to both sides
    int least = 3 * 255, most = 0;
    for (int i = -3; i <= 3; ++i) {
      const QColor colour = image.pixelColor(int(kLeft + x * 140.0) + i, kTop + 300);
      const int light = colour.red() + colour.green() + colour.blue();
      least = std::min(least, light), most = std::max(most, light);
    }
    return most - least;
  };
  for (const double limit : {3.0, 6.0}) {
    EXPECT_GT(spread(limit), 100) << limit;
    EXPECT_LT(spread(limit + 0.5), 30) << limit;
  }
}

TEST_F(SunPicture, NoFalseHoursRunAlongAWall) {
  const Yard yard =
      test::YardBuilder().building("House", "POLYGON((2 2, 6 2, 6 6, 2 6, 2 2))").build();
  SunMap map(Box{{0.0, 0.0}, {8.0, 8.0}}, Length::metres(0.5), 16, 16);
  for (int row = 4; row < 12; ++row)
    for (int column = 4; column < 12; ++column) map.setUnderBuilding(column, row);
  const QImage image = drawn(map, yard);  // no sun anywhere
  const double pixels = 1400 / 8.0;
  for (double out = 0.06; out < 1.0; out += 0.05)
    EXPECT_LT(apart(image.pixelColor(int(kLeft + (2.0 - out) * pixels), int(kTop + 4.0 * pixels)),
                    sunColour(0.0)),
              12)
        << out << " m from the wall";
  EXPECT_LT(apart(image.pixelColor(int(kLeft + 4.0 * pixels), int(kTop + 4.0 * pixels)),
                  Theme::light().building),
            6);
}

// Only the name tells two pictures apart: it lies about the top of the bed, or above one too small.
TEST_F(SunPicture, BedsAreNamed) {
  SunMap map(Box{{0.0, 0.0}, {10.0, 10.0}}, Length::metres(1), 10, 10);
  const char* const outlines[] = {"POLYGON((2 2, 8 2, 8 6, 2 6, 2 2))",
                                  "POLYGON((5 5, 5.3 5, 5.3 5.3, 5 5.3, 5 5))"};
  for (const char* outline : outlines) {
    const QImage without = drawn(map, test::YardBuilder().bed("", outline).build());
    const QImage with = drawn(map, test::YardBuilder().bed("Fern walk", outline).build());
    const QRect name = difference(without, with);
    EXPECT_GT(name.width(), 40) << outline;
    EXPECT_LT(name.height(), 40) << outline;
    EXPECT_NEAR(name.center().x(), kLeft + 700, 140) << outline;
  }
}

TEST_F(SunPicture, LongNotesGoOnNewLines) {
  const SunMap map(Box{{0.0, 0.0}, {8.0, 8.0}}, Length::metres(0.5), 16, 16);
  const Yard yard = test::YardBuilder().build();
  const int brief = drawn(map, yard, {{"Leaves", "none"}}).height();
  const std::string long_ = "3 in leaf from 1 May, bare from 20 October; 2 evergreen; ";
  const int whole = drawn(map, yard, {{"Leaves", long_ + long_ + long_ + long_ + long_}}).height();
  EXPECT_GE(whole, brief + 2 * 12) << "two lines more";
}

TEST_F(SunPicture, ANarrowLotHasItsLegendBeside) {
  const SunMap map(Box{{0.0, 0.0}, {3.0, 40.0}}, Length::metres(0.5), 6, 80);
  const QImage image = drawn(map, test::YardBuilder().build(), {{"Leaves", "none"}});
  EXPECT_LT(image.width(), 800);
  EXPECT_LT(image.height(), kTop + 1400 + 40) << "no empty ground under the map";
  // The scale: a dark line of 100 pixels and more, where a line of an eighth would be 13.
  int longest = 0;
  for (int x = 0, run = 0; x < image.width(); ++x) {
    run = image.pixelColor(x, kTop - 12).lightness() < 120 ? run + 1 : 0;
    longest = std::max(longest, run);
  }
  EXPECT_GE(longest, 60);
}

}  // namespace
}  // namespace tussock
