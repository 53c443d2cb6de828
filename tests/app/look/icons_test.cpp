// SPDX-License-Identifier: MIT
#include "app/look/icons.h"

#include <QApplication>
#include <QDir>
#include <QPainter>
#include <QSvgRenderer>
#include <set>

#include <gtest/gtest.h>

#include "app/look/theme.h"

namespace tussock {
namespace {

std::set<QRgb> solidColours(const QImage& image) {
  std::set<QRgb> found;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (qAlpha(image.pixel(x, y)) == 255) found.insert(image.pixel(x, y));
  return found;
}
QImage drawn(const QString& name) {
  return icon(name).pixmap(96, 96).toImage().convertToFormat(QImage::Format_ARGB32);
}

TEST(Icons, EveryFileIsAValidDrawingOnTheGrid) {
  const QStringList files = QDir(QStringLiteral(":/icons")).entryList({QStringLiteral("*.svg")});
  ASSERT_GT(files.size(), 20);
  for (const QString& file : files) {
    const QSvgRenderer renderer(QStringLiteral(":/icons/") + file);
    EXPECT_TRUE(renderer.isValid()) << file.toStdString();
    EXPECT_EQ(renderer.defaultSize(), QSize(24, 24)) << file.toStdString();
  }
}

TEST(Icons, TakeTheInkOfTheThemeShown) {
  for (const Theme& theme : {Theme::light(), Theme::darkTheme()}) {
    applyTheme(*qApp, theme);
    EXPECT_TRUE(solidColours(drawn(QStringLiteral("plus"))).contains(theme.ink.rgb()));
  }
  applyTheme(*qApp, Theme::light());
}

TEST(Icons, FindingsDifferInShapeToo) {
  const auto coverage = [](const QString& name) {
    const QImage image = drawn(name);
    return qAlpha(image.pixel(48, 48)) > 0 ? qAlpha(image.pixel(48, 14)) : -1;
  };
  EXPECT_TRUE(
      solidColours(drawn(QStringLiteral("finding-alert"))).contains(Theme::light().alert.rgb()));
  EXPECT_TRUE(solidColours(drawn(QStringLiteral("finding-caution")))
                  .contains(Theme::light().caution.rgb()));
  EXPECT_TRUE(
      solidColours(drawn(QStringLiteral("finding-hint"))).contains(Theme::light().hint.rgb()));
  // The ring is open half way out, the octagon is filled there.
  EXPECT_EQ(qAlpha(drawn(QStringLiteral("finding-hint")).pixel(30, 48)), 0);
  EXPECT_EQ(qAlpha(drawn(QStringLiteral("finding-alert")).pixel(30, 48)), 255);
  EXPECT_NE(coverage(QStringLiteral("finding-caution")), -1);
}

}  // namespace
}  // namespace tussock
