// SPDX-License-Identifier: MIT
#include "app/tools/drift_in_hand.h"

#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class DriftInHandTest : public WindowTest {
 protected:
  void startBed() { start(YardBuilder().bed("A", "POLYGON((0 0,4 0,4 3,0 3,0 0))").build()); }
  [[nodiscard]] CardStrip* strip() const { return window->findChild<BenchPanel*>()->cards(); }
  // A point of the plan in pixels of the bench.
  [[nodiscard]] QPoint onBench(Point p) const {
    return strip()->viewport()->mapFromGlobal(canvas().mapToGlobal(pixels(p)));
  }
  void carryTo(Point p) {
    const QPoint at = onBench(p);
    QMouseEvent event(QEvent::MouseMove, at, strip()->viewport()->mapToGlobal(at), Qt::NoButton,
                      Qt::LeftButton, {});
    QApplication::sendEvent(strip()->viewport(), &event);
  }
  void lift() {
    QTest::mousePress(strip()->viewport(), Qt::LeftButton, {}, {60, 40});
    carryTo({2, 1.5});
    carryTo({2, 1.5});
  }
  void drop(Point p) { QTest::mouseRelease(strip()->viewport(), Qt::LeftButton, {}, onBench(p)); }
  [[nodiscard]] std::vector<Point> plannedPlaces() const {
    const auto& planned = window->driftInHand().planned();
    if (!planned) return {};
    for (const Change& change : planned->edit.changes)
      if (const auto* drift = std::get_if<Drift>(&*change.after)) return positionsOf(*drift);
    return {};
  }
};

TEST_F(DriftInHandTest, PlantsTheVeryPlacesShownBefore) {
  startBed();
  lift();
  const auto shown = plannedPlaces();
  EXPECT_EQ(shown.size(), 7u);
  EXPECT_TRUE(inFile().drifts.empty());
  drop({2, 1.5});
  ASSERT_EQ(inFile().drifts.size(), 1u);
  EXPECT_EQ(positionsOf(*inFile().drifts.begin()), shown);
  EXPECT_FALSE(window->driftInHand().holding());
}

TEST_F(DriftInHandTest, PlusAndMinusChangeTheCountBeforeRelease) {
  startBed();
  lift();
  QTest::keyClick(strip(), Qt::Key_Plus);
  EXPECT_EQ(plannedPlaces().size(), 9u);
  QTest::keyClick(strip(), Qt::Key_Minus);
  QTest::keyClick(strip(), Qt::Key_Minus);
  EXPECT_EQ(plannedPlaces().size(), 5u);
  drop({2, 1.5});
  ASSERT_EQ(inFile().drifts.size(), 1u);
  EXPECT_EQ(inFile().drifts.begin()->plants.size(), 5u);
}

TEST_F(DriftInHandTest, OnceDroppedTheKeysAreMeantForTheDrift) {
  startBed();
  strip()->setFocus();
  lift();
  drop({2, 1.5});
  ASSERT_EQ(inFile().drifts.size(), 1u);
  ASSERT_EQ(window->focusWidget(), &canvas());
  QTest::keyClick(window->focusWidget(), Qt::Key_Plus);
  EXPECT_EQ(inFile().drifts.begin()->plants.size(), 9u);
}

TEST_F(DriftInHandTest, EscapePutsItBack) {
  startBed();
  lift();
  EXPECT_TRUE(window->driftInHand().holding());
  QTest::keyClick(strip(), Qt::Key_Escape);
  EXPECT_FALSE(window->driftInHand().holding());
  EXPECT_TRUE(inFile().drifts.empty());
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(DriftInHandTest, DroppedBesideTheBedPlantsNothingAndSaysSo) {
  startBed();
  lift();
  carryTo({-0.8, -0.8});
  EXPECT_TRUE(plannedPlaces().empty());
  drop({-0.8, -0.8});
  EXPECT_TRUE(inFile().drifts.empty());
  EXPECT_FALSE(window->messages().words().isEmpty());
}

TEST_F(DriftInHandTest, SaysHowManyFit) {
  start(YardBuilder().bed("Small", "POLYGON((0 0,1.1 0,1.1 1.1,0 1.1,0 0))").build());
  lift();
  carryTo({0.55, 0.55});
  const auto& planned = window->driftInHand().planned();
  ASSERT_TRUE(planned);
  EXPECT_LT(planned->fitted, planned->asked);
  EXPECT_EQ(int(plannedPlaces().size()), planned->fitted);
  EXPECT_EQ(planned->fitted % 2, 1);
}

}  // namespace
}  // namespace tussock::test
