// SPDX-License-Identifier: MIT
// Every tool can be reached in a small window.
#include "app/window/rail.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class RailTest : public test::WindowTest {
 protected:
  [[nodiscard]] QList<QToolButton*> buttons() const {
    return window->findChild<Rail*>()->findChildren<QToolButton*>();
  }
  void resizeTo(QSize size) {
    window->resize(size);
    QTest::qWait(0);
    ASSERT_LE(window->width(), size.width());
    ASSERT_LE(window->height(), size.height());
  }
  // Whole, apart from each other, and each takes its tool up when clicked.
  void expectAllReached() {
    const QRect rail = window->findChild<Rail*>()->rect();
    QRegion taken;
    for (QToolButton* button : buttons()) {
      EXPECT_TRUE(rail.contains(button->geometry())) << button->objectName().toStdString();
      EXPECT_FALSE(taken.intersects(button->geometry())) << button->objectName().toStdString();
      taken += button->geometry();
      QTest::mouseClick(button, Qt::LeftButton);
      EXPECT_TRUE(button->isChecked()) << button->objectName().toStdString();
    }
  }
};

TEST_F(RailTest, HoldsEveryToolByNameOnASmallScreen) {
  start();
  EXPECT_EQ(buttons().size(), 13);
  for (const QSize size : {QSize(1280, 720), QSize(1024, 700), QSize(1024, 668)}) {
    resizeTo(size);
    expectAllReached();
    for (const QToolButton* button : buttons())
      EXPECT_EQ(button->toolButtonStyle(), Qt::ToolButtonTextUnderIcon) << size.height();
  }
}

// 1920 x 1080 at twice the size leaves 960 x 540.
TEST_F(RailTest, StandsInTwoColumnsWhereOneIsTooTall) {
  start();
  resizeTo({960, 508});
  expectAllReached();
  const auto* scroll = window->findChild<QScrollArea*>(QStringLiteral("pages-scroll"));
  EXPECT_EQ(scroll->widget()->size(), scroll->viewport()->size()) << "it all fits";
}

// 1440 x 900 at twice the size leaves 720 x 450, less what a window manager puts on top.
TEST_F(RailTest, AWindowTooSmallForAllOfItScrolls) {
  start();
  resizeTo({720, 418});
  auto* scroll = window->findChild<QScrollArea*>(QStringLiteral("pages-scroll"));
  ASSERT_TRUE(scroll);
  const auto inSight = [scroll](const QWidget* part, QPoint at) {
    return scroll->viewport()->rect().contains(part->mapTo(scroll->viewport(), at));
  };
  expectAllReached();
  const auto* margin = window->findChild<QWidget*>(QStringLiteral("margin"));
  const auto* bench = window->findChild<QWidget*>(QStringLiteral("bench"));
  const QPoint right(margin->width() - 1, 0), low(0, bench->height() - 1);
  EXPECT_FALSE(inSight(margin, right) && inSight(bench, low)) << "else nothing is tested";
  scroll->horizontalScrollBar()->setValue(scroll->horizontalScrollBar()->maximum());
  EXPECT_TRUE(inSight(margin, right));
  scroll->horizontalScrollBar()->setValue(0);
  scroll->verticalScrollBar()->setValue(scroll->verticalScrollBar()->maximum());
  EXPECT_TRUE(inSight(bench, low));
}

}  // namespace
}  // namespace tussock
