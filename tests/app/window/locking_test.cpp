// SPDX-License-Identifier: MIT
// A locked drift stays where it is, whatever is done with mouse, keys or a filling.
#include <QCheckBox>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class Locking : public FillWindow {
 protected:
  void startLocked() {
    YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0, 6 0, 6 3, 0 3, 0 0))").viewing("S");
    bed = builder.lastBed();
    builder.drift("Echinacea purpurea", row(3, 0.5, {1.5, 1.5}));
    drift = builder.lastDrift();
    start(builder.build());
    document.waitForAnalysis();
    click({2.0, 1.5});
    key(Qt::Key_K);
    ASSERT_TRUE(inFile().drifts.find(drift)->locked);
    placed = positionsOf(*inFile().drifts.find(drift));
  }
  [[nodiscard]] std::vector<Point> now() const { return positionsOf(*inFile().drifts.find(drift)); }

  Id<Drift> drift;
  std::vector<Point> placed;
};

TEST_F(Locking, KeepsADriftFromMouseAndKeysAndSaysSo) {
  startLocked();
  drag({2.0, 1.5}, {3.0, 2.0});
  EXPECT_EQ(now(), placed);
  EXPECT_TRUE(window->messages().words().contains(QStringLiteral("locked")))
      << window->messages().words().toStdString();
  key(Qt::Key_R);
  key(Qt::Key_Plus);
  EXPECT_EQ(now(), placed);
  EXPECT_EQ(undoLabel(), QStringLiteral("Lock drift"));
}

TEST_F(Locking, KeepsItThroughAFilling) {
  startLocked();
  click({4.5, 1.5});
  ASSERT_EQ(document.selection(), std::vector{refTo(bed)});
  fillWith("fill-bed");
  EXPECT_GT(inFile().drifts.size(), 1u);
  EXPECT_EQ(now(), placed);
}

TEST_F(Locking, TheMarginsTickUnlocksIt) {
  startLocked();
  auto* tick = part<QCheckBox>("drift-locked");
  ASSERT_TRUE(tick);
  EXPECT_TRUE(tick->isChecked());
  QTest::keyClick(tick, Qt::Key_Space);
  EXPECT_FALSE(inFile().drifts.find(drift)->locked);
  drag({2.0, 1.5}, {3.0, 1.5});
  EXPECT_NEAR(now().front().x, placed.front().x + 1.0, 0.02);
}

}  // namespace
}  // namespace tussock::test
