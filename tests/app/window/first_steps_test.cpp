// SPDX-License-Identifier: MIT
// What an empty yard says on the canvas, and that it goes once there is something.
#include "app/window/first_steps.h"

#include <QPushButton>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class FirstStepsTest : public test::WindowTest {
 protected:
  [[nodiscard]] FirstSteps* steps() const { return canvas().findChild<FirstSteps*>(); }
  void choose(const char* name) {
    auto* step = steps()->findChild<QPushButton*>(QString::fromLatin1(name));
    ASSERT_TRUE(step && step->isVisible()) << name;
    QTest::mouseClick(step, Qt::LeftButton);
  }
};

TEST_F(FirstStepsTest, LieInTheMiddleUntilSomethingIsDrawn) {
  start();
  ASSERT_TRUE(steps()->isVisible());
  const QPoint off = steps()->geometry().center() - canvas().rect().center();
  EXPECT_LE(off.manhattanLength(), 2);
  choose("first-toolBed");
  EXPECT_FALSE(steps()->isVisible());
  for (const Point corner : {Point{0, 0}, Point{3, 0}, Point{3, 2}})
    click(corner, Qt::ShiftModifier);
  key(Qt::Key_Return);
  EXPECT_EQ(inFile().beds.size(), 1u);
  key(Qt::Key_Escape);
  EXPECT_FALSE(steps()->isVisible());
  trigger("actionUndo");
  EXPECT_TRUE(steps()->isVisible());
}

TEST_F(FirstStepsTest, ComeBackWhenAToolIsPutAway) {
  start();
  key(Qt::Key_L);
  EXPECT_FALSE(steps()->isVisible());
  key(Qt::Key_Escape);
  EXPECT_TRUE(steps()->isVisible());
}

TEST_F(FirstStepsTest, APictureIsOneClickAway) {
  start();
  QImage picture(80, 60, QImage::Format_RGB32);
  picture.fill(Qt::darkGreen);
  prompts->picture = path(QStringLiteral("aerial.png"));
  ASSERT_TRUE(picture.save(prompts->picture));
  choose("first-actionPhoto");
  EXPECT_EQ(inFile().photos.size(), 1u);
  EXPECT_FALSE(steps()->isVisible());
}

TEST_F(FirstStepsTest, AreNotShownOnAYardWithADrawing) {
  start(test::YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  EXPECT_FALSE(steps()->isVisible());
}

}  // namespace
}  // namespace tussock
