// SPDX-License-Identifier: MIT
// A filling under way is seen wherever the selection goes, and is stopped by mouse or keyboard, in
// a large bed too; it leaves no trace.
#include <QProgressBar>

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
    EXPECT_EQ(filling().seedOf(bed), 1);
    EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-bed")));
  }
  void startFilling() {
    startField();
    key(Qt::Key_B, Qt::ControlModifier);
    ASSERT_TRUE(filling().running());
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

TEST_F(StopFilling, ByEscapeWhichKeepsTheBedSelected) {
  startFilling();
  QTest::qWait(300);
  ASSERT_TRUE(filling().running());
  key(Qt::Key_Escape);
  EXPECT_EQ(document.selection(), std::vector{refTo(bed)});
  expectUntouched();
  key(Qt::Key_Escape);
  EXPECT_TRUE(document.selection().empty());
}

TEST_F(StopFilling, ByEscapeAtItsButton) {
  startField();
  part<QPushButton>("fill-another")->setFocus();
  QTest::keyClick(part<QPushButton>("fill-another"), Qt::Key_Space);
  ASSERT_TRUE(filling().running());
  QTest::keyClick(window->focusWidget(), Qt::Key_Escape);
  expectUntouched();
}

TEST_F(StopFilling, EscapeFirstLeavesWhatIsBeingDrawn) {
  startFilling();
  key(Qt::Key_B);
  ASSERT_EQ(canvas().tool()->busy(), false);
  click({20.0, 20.0});
  ASSERT_TRUE(canvas().tool()->busy());
  key(Qt::Key_Escape);
  EXPECT_FALSE(canvas().tool()->busy());
  EXPECT_TRUE(filling().running());
  key(Qt::Key_Escape);
  EXPECT_FALSE(filling().running());
}

TEST_F(StopFilling, ItIsToldOfWhereverTheSelectionGoes) {
  startFilling();
  EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-stop")));
  EXPECT_EQ(part<QPushButton>("fill-running-stop"), nullptr) << "the bed's own bar tells it";
  document.select({});
  EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-running-stop")));
  EXPECT_TRUE(comesIntoSight(part<QProgressBar>("fill-running-progress")));
  auto* which = part<QPushButton>("fill-running-bed");
  ASSERT_TRUE(comesIntoSight(which));
  EXPECT_EQ(which->text(), QStringLiteral("Filling Walk"));
  QTest::mouseClick(which, Qt::LeftButton);
  EXPECT_EQ(document.selection(), std::vector{refTo(bed)});
  EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-stop")));
  document.select({});
  push("fill-running-stop");
  EXPECT_EQ(part<QPushButton>("fill-running-stop"), nullptr);
  document.select({refTo(bed)});
  expectUntouched();
}

// The drifts are seen on the plan as they grow, long before the first planting stands, and what is
// done meanwhile does not take them away.
TEST_F(StopFilling, ItIsSeenWhileItGrows) {
  startBed(sunnyList(), "POLYGON((0 0, 100 0, 100 50, 0 50, 0 0))");
  canvas().fit();
  document.waitForAnalysis();
  QCoreApplication::processEvents();
  const auto shown = [this] { return canvas().grab(canvas().rect().adjusted(90, 90, -90, -90)); };
  const QImage bare = shown().toImage();
  std::set<int> shares;
  QObject::connect(&filling(), &Filling::progressed, window.get(),
                   [&](double share) { shares.insert(qRound(share * 100.0)); });
  QSignalSpy best(&filling(), &Filling::bestChanged);
  key(Qt::Key_B, Qt::ControlModifier);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !best.isEmpty(); }, 60000));
  ASSERT_TRUE(filling().running());
  EXPECT_NE(shown().toImage(), bare);
  document.select({});
  canvas().setFocus();
  moveTo({60.0, 50.0});
  const QImage growing = shown().toImage();
  EXPECT_NE(growing, bare);
  ASSERT_TRUE(QTest::qWaitFor([&] { return shares.size() >= 4; }, 60000)) << "progress moves";
  ASSERT_TRUE(filling().running());
  key(Qt::Key_Escape);
  EXPECT_FALSE(filling().running());
  document.select({refTo(bed)});
  EXPECT_EQ(shown().toImage(), bare) << "nothing is left behind";
  expectUntouched();
}

// A sheet of a plant lies over the bed's bar.
TEST_F(StopFilling, ItIsToldOfBesideASheetOfAPlant) {
  startFilling();
  window->findChild<MarginPanel*>(QStringLiteral("margin"))->showPlant("Rudbeckia hirta");
  EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-running-stop")));
}

// What can be drawn meanwhile is: the window does not wait for the filling.
TEST_F(StopFilling, AnEditWithTheMouseStopsItAndStays) {
  startField();
  push("fill-bed");
  ASSERT_TRUE(filling().running());
  drag({2.0, 1.5}, {3.0, 1.5});
  EXPECT_FALSE(filling().running());
  EXPECT_TRUE(
      window->messages().words().contains(QStringLiteral("Walk is no longer being filled")));
  EXPECT_EQ(inFile().drifts.size(), 0u);
  EXPECT_NEAR(boundsOf(inFile().beds.find(bed)->outline).low.x, 1.0, 0.02);
}

}  // namespace
}  // namespace tussock::test
