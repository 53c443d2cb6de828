// SPDX-License-Identifier: MIT
// A photo's fade and lock beside the tool that places it.
#include <QCheckBox>
#include <QSlider>

#include <gtest/gtest.h>

#include "app/canvas/photo_frame.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class WaysBarTest : public test::WindowTest {
 protected:
  void bringIn() {
    start();
    QImage picture(800, 600, QImage::Format_RGB32);
    picture.fill(QColor(40, 60, 30));
    prompts->picture = path(QStringLiteral("aerial.png"));
    ASSERT_TRUE(picture.save(prompts->picture));
    trigger("actionPhoto");
    ASSERT_EQ(inFile().photos.size(), 1u);
  }
  [[nodiscard]] Photo photo() const { return *inFile().photos.begin(); }
  [[nodiscard]] QSlider* fade() const {
    return window->findChild<QSlider*>(QStringLiteral("photoFade"));
  }
  [[nodiscard]] QCheckBox* lock() const {
    return window->findChild<QCheckBox*>(QStringLiteral("photoLock"));
  }
  [[nodiscard]] QColor middle() const {
    return canvas().grab().toImage().pixelColor(
        pixels(boundsOf(photo()).centre() + Point{0.3, 0.2}));
  }
};

TEST_F(WaysBarTest, FadingIsInTheFileAndOnTheCanvas) {
  bringIn();
  const double before = photo().opacity;
  const QColor strong = middle();
  QTest::keyClick(fade(), Qt::Key_End);
  QCoreApplication::processEvents();
  EXPECT_NEAR(photo().opacity, 0.0, 1e-9);
  EXPECT_EQ(undoLabel(), QStringLiteral("Fade photo"));
  EXPECT_GT(middle().lightness(), strong.lightness() + 40) << "bare paper";
  trigger("actionUndo");
  EXPECT_NEAR(photo().opacity, before, 1e-9);
  EXPECT_EQ(middle(), strong);
  EXPECT_EQ(fade()->value(), int(std::lround((1.0 - before) * 100)));
}

TEST_F(WaysBarTest, TheMarginShowsTheSameFade) {
  bringIn();
  auto* inMargin = window->findChild<QSlider*>(QStringLiteral("photo-fade"));
  ASSERT_TRUE(inMargin);
  EXPECT_EQ(inMargin->value(), fade()->value());
  QTest::keyClick(fade(), Qt::Key_End);
  QCoreApplication::processEvents();
  EXPECT_EQ(fade()->value(), 100);
  EXPECT_EQ(inMargin->value(), 100);
  EXPECT_NEAR(photo().opacity, 0.0, 1e-9);
  QTest::keyClick(inMargin, Qt::Key_PageDown);
  EXPECT_EQ(inMargin->value(), 90);
  EXPECT_EQ(fade()->value(), 90);
  EXPECT_NEAR(photo().opacity, 0.1, 1e-9);
}

// A drag of the handle is one edit, however many steps it makes.
TEST_F(WaysBarTest, ADragOfTheFadeIsOneEdit) {
  bringIn();
  fade()->setValue(0);
  const auto steps = inFile();
  const int y = fade()->height() / 2;
  QTest::mousePress(fade(), Qt::LeftButton, {}, {6, y});
  for (const int x : {40, 60, 80}) QTest::mouseMove(fade(), {x, y});
  QTest::mouseRelease(fade(), Qt::LeftButton, {}, {80, y});
  QCoreApplication::processEvents();
  EXPECT_LT(photo().opacity, 0.6);
  trigger("actionUndo");
  EXPECT_EQ(inFile(), steps);
}

TEST_F(WaysBarTest, AClickBesideTheChipsDoesNothingOnThePlan) {
  start();
  trigger("toolWater");
  trigger("toolBarrier");
  auto* bar = window->findChild<QWidget*>(QStringLiteral("waysBar"));
  ASSERT_TRUE(bar->isVisible());
  QTest::mouseClick(window->windowHandle(), Qt::LeftButton, {},
                    bar->mapTo(window.get(), QPoint(3, 3)));
  QTest::keyClick(&canvas(), Qt::Key_Return);
  EXPECT_FALSE(window->messages().isVisible()) << "no corner was set";
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(WaysBarTest, ALockedPhotoStaysWhereItIs) {
  bringIn();
  QTest::mouseClick(lock(), Qt::LeftButton, {}, {8, lock()->height() / 2});
  EXPECT_TRUE(photo().locked);
  EXPECT_EQ(undoLabel(), QStringLiteral("Lock photo"));
  const Photo locked = photo();
  const Point from = boundsOf(locked).centre();
  for (const char* way : {"way0", "way1", "way2"})
    EXPECT_FALSE(window->findChild<QWidget*>(QLatin1String(way))->isEnabled()) << way;
  drag(from, from + Point{2.0, 1.0});
  EXPECT_EQ(photo(), locked);
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("locked")));
  trigger("toolSelect");
  drag(from, from + Point{2.0, 1.0});
  key(Qt::Key_Left);
  QTest::qWait(1200);
  EXPECT_EQ(photo(), locked);
  trigger("toolPhoto");
  QTest::mouseClick(lock(), Qt::LeftButton, {}, {8, lock()->height() / 2});
  EXPECT_FALSE(photo().locked);
  EXPECT_FALSE(window->messages().isVisible()) << "an edit puts the message away";
  QTest::mouseClick(window->findChild<QWidget*>(QStringLiteral("way2")), Qt::LeftButton);
  drag(from, from + Point{2.0, 1.0});
  EXPECT_NEAR(photo().corner.x - locked.corner.x, 2.0, 0.05);
  EXPECT_NEAR(photo().corner.y - locked.corner.y, 1.0, 0.05);
}

}  // namespace
}  // namespace tussock
