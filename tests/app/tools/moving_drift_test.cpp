// SPDX-License-Identifier: MIT
// A drift in hand shows what it would break before it is let go, and is let go anywhere.
#include "app/tools/move_gesture.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class MovingDrift : public WindowTest {
 protected:
  void startTwo() {
    YardBuilder builder;
    builder.units(UnitSystem::Metres);
    builder.bed("Front", "POLYGON((0 0,8 0,8 5,0 5,0 0))").viewing("S");
    builder.drift("Liatris spicata", row(3, 0.4, {5.0, 2.5}));
    builder.drift("Echinacea purpurea", row(3, 0.4, {2.0, 2.5}));
    drift = builder.lastDrift();
    builder.paving("Path", "POLYGON((0 4, 1 4, 1 5, 0 5, 0 4))");
    start(builder.build());
    lookAt({4, 2.5});
    document.waitForAnalysis();
    QCoreApplication::processEvents();  // marks of findings are there, and stay
    click({2.4, 2.5});
    ASSERT_EQ(document.selection(), std::vector{refTo(drift)});
  }
  // Rings and marks in the colour of alerts.
  [[nodiscard]] int alertPixels() const {
    const QImage shown = canvas().grab().toImage();
    const QRgb alert = canvas().look().theme.alert.rgb();
    int count = 0;
    for (int y = 0; y < shown.height(); ++y)
      for (int x = 0; x < shown.width(); ++x) count += shown.pixel(x, y) == alert ? 1 : 0;
    return count;
  }
  // Of the drift taken up at its middle plant.
  [[nodiscard]] QStringList wordsAt(Point to) const {
    MoveGesture gesture(canvas(), {{2.4, 2.5}, pixels({2.4, 2.5}).toPointF(), {}});
    gesture.move({to, pixels(to).toPointF(), {}});
    canvas().clearPreview();
    canvas().clearFigure();
    return gesture.words();
  }

  Id<Drift> drift;
};

TEST_F(MovingDrift, ShowsWhatItBreaksAndNothingOnFreeGround) {
  startTwo();
  const int before = alertPixels();
  press({2.4, 2.5});
  moveTo({3.0, 1.5});
  EXPECT_EQ(alertPixels(), before) << "free ground";
  moveTo({4.9, 2.5});
  EXPECT_GT(alertPixels(), before + 20) << "among the plants of the other";
  moveTo({3.0, 1.5});
  EXPECT_EQ(alertPixels(), before);
  release({3.0, 1.5});
  EXPECT_NEAR(inFile().drifts.find(drift)->plants[1].at.x, 3.0, 0.02);
}

TEST_F(MovingDrift, IsTakenWhereItIsLetGoAndTheFindingSaysTheSame) {
  startTwo();
  drag({2.4, 2.5}, {4.9, 2.5});
  EXPECT_EQ(undoLabel(), QStringLiteral("Move drift"));
  EXPECT_NEAR(inFile().drifts.find(drift)->plants[1].at.x, 4.9, 0.02);
  document.waitForAnalysis();
  const auto spacing = [](const Finding& finding) { return finding.check == CheckId::Spacing; };
  EXPECT_TRUE(std::any_of(document.findings()->begin(), document.findings()->end(), spacing));
}

// 0.4 m apart and 0.85 of that is asked: 0.34 m; half the spacing from the edge: 0.2 m.
TEST_F(MovingDrift, SaysEachRuleOnceWithItsWorst) {
  startTwo();
  EXPECT_TRUE(wordsAt({3.0, 1.5}).isEmpty());
  const QStringList crowded = wordsAt({5.0, 2.5});  // its middle plant on their first
  ASSERT_EQ(crowded.size(), 1);
  EXPECT_TRUE(crowded[0].contains(QStringLiteral("0.00 m, 0.34 m asked")))
      << crowded[0].toStdString();
  const QStringList edge = wordsAt({2.4, 0.05});
  ASSERT_EQ(edge.size(), 1);
  EXPECT_TRUE(edge[0].contains(QStringLiteral("0.05 m, 0.20 m asked"))) << edge[0].toStdString();
  EXPECT_EQ(wordsAt({0.5, 4.5}).size(), 2) << "all in the paving, one too near the edge";
}

}  // namespace
}  // namespace tussock::test
