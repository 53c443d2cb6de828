// SPDX-License-Identifier: MIT
// A filling under way is stopped by mouse or keyboard, in a large bed too, and leaves no trace.
#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class StopFilling : public FillWindow {
 protected:
  // Two hectares: too large to be filled in the time that these tests take.
  void startField() { startBed(sunnyList(), "POLYGON((0 0, 200 0, 200 100, 0 100, 0 0))"); }
  void expectUntouched() {
    EXPECT_FALSE(filling().running());
    QTest::qWait(50);  // nothing is handed in afterwards
    EXPECT_EQ(inFile().drifts.size(), 0u);
    EXPECT_TRUE(undoLabel().isEmpty());
    EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-bed")));
  }
};

TEST_F(StopFilling, ByAClickInAFieldOfTwoHectares) {
  startField();
  push("fill-bed");
  ASSERT_TRUE(filling().running());
  QTest::qWait(300);
  ASSERT_TRUE(filling().running());
  EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-stop")));
  push("fill-stop");
  expectUntouched();
}

TEST_F(StopFilling, FromTheKeyboard) {
  startField();
  part<QPushButton>("fill-bed")->setFocus();
  QTest::keyClick(part<QPushButton>("fill-bed"), Qt::Key_Space);
  ASSERT_TRUE(filling().running());
  auto* stop = part<QPushButton>("fill-stop");
  ASSERT_EQ(window->focusWidget(), stop);
  QTest::keyClick(stop, Qt::Key_Space);
  expectUntouched();
}

// What can be drawn meanwhile is: the window does not wait for the filling.
TEST_F(StopFilling, AnEditWithTheMouseStopsItAndStays) {
  startField();
  push("fill-bed");
  ASSERT_TRUE(filling().running());
  drag({2.0, 1.5}, {3.0, 1.5});
  EXPECT_FALSE(filling().running());
  EXPECT_EQ(inFile().drifts.size(), 0u);
  EXPECT_NEAR(boundsOf(inFile().beds.find(bed)->outline).low.x, 1.0, 0.02);
}

}  // namespace
}  // namespace tussock::test
