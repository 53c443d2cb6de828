// SPDX-License-Identifier: MIT
// A drift in hand shows what it would break before it is let go, and is let go anywhere.
#include "app/canvas/furniture.h"
#include "app/tools/handles.h"
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

// Half a metre out of the bed, as the finding will say it.
TEST_F(MovingDrift, OutsideTheBedItSaysHowFar) {
  startTwo();
  const QStringList out = wordsAt({2.4, -0.5});
  ASSERT_EQ(out.size(), 1);
  EXPECT_EQ(out[0], QStringLiteral("Outside the bed: 0.50 m beyond its edge"));
}

TEST_F(MovingDrift, TheCountInHandHidesNoName) {
  startTwo();
  press({2.4, 2.5});
  moveTo({5.4, 1.6});  // the other's name lies above it now
  canvas().grab();
  const QPointF above = canvas().mapping().toPixels(Point{5.4, 1.6 + 0.4});
  const QString told = canvas().figureShown();
  const QRectF usual =
      figurePlate(above, told.section('\n', 0, 0), told.section('\n', 1), canvas().rect(), 0);
  ASSERT_TRUE(canvas().hasWordsIn(usual)) << "there is a name to hide";
  EXPECT_FALSE(canvas().figureBox().isEmpty());
  EXPECT_FALSE(canvas().hasWordsIn(canvas().figureBox()));
  const QPointF before = canvas().figureBox().center() - above;
  moveTo({5.4, 0.5});
  canvas().grab();
  const QPointF now = canvas().mapping().toPixels(Point{5.4, 0.5 + 0.4});
  const QPointF moved = canvas().figureBox().center() - now - before;
  EXPECT_LT(std::hypot(moved.x(), moved.y()), 2.0) << "it does not jump back and forth";
  release({5.4, 0.5});
}

// Turned, stretched or with only some of its plants in hand, it tells the same.
class ChangingDrift : public MovingDrift {
 protected:
  // Another row lies 0.5 m north of the drift's; 0.34 m is asked.
  void startNear() {
    YardBuilder builder;
    builder.units(UnitSystem::Metres);
    builder.bed("Front", "POLYGON((0 0,8 0,8 5,0 5,0 0))").viewing("S");
    builder.drift("Liatris spicata", row(5, 0.4, {1.6, 3.0}));
    builder.drift("Echinacea purpurea", row(3, 0.4, {2.0, 2.5}));
    drift = builder.lastDrift();
    start(builder.build());
    lookAt({4, 2.5});
    document.waitForAnalysis();
    QCoreApplication::processEvents();
    click({2.4, 2.5});
    ASSERT_EQ(document.selection(), std::vector{refTo(drift)});
  }
  [[nodiscard]] Point handle(Handles::Kind kind) const {
    for (const auto& each : Handles(canvas()).all())
      if (each.kind == kind && each.side > 0.0) return canvas().mapping().toSite(each.at);
    ADD_FAILURE() << "no such handle";
    return {};
  }
};

TEST_F(ChangingDrift, ShowsWhatItBreaksWhileItIsTurned) {
  startNear();
  const int before = alertPixels();
  const Point turn = handle(Handles::Kind::Turn);
  press(turn);
  moveTo(turn + Point{0.02, 0.0});
  EXPECT_EQ(alertPixels(), before) << "still clear of the others";
  moveTo({3.4, 2.5});  // a quarter turn: the row points at the others
  EXPECT_GT(alertPixels(), before + 20);
  const int broken = alertPixels();
  key(Qt::Key_Escape);
  EXPECT_LT(alertPixels(), broken);
  EXPECT_TRUE(undoLabel().isEmpty());
}

// Stretched, it is planted anew by the rules: it keeps clear of the others, and says its count.
TEST_F(ChangingDrift, BreaksNothingWhileItIsStretchedTowardsOthers) {
  startNear();
  const int before = alertPixels();
  const Point end = handle(Handles::Kind::End);
  press(end);
  moveTo({2.4, 4.0});
  EXPECT_TRUE(canvas().figureShown().startsWith(QStringLiteral("3\n")))
      << canvas().figureShown().toStdString();
  EXPECT_EQ(alertPixels(), before);
  release({2.4, 4.0});
  EXPECT_EQ(undoLabel(), QStringLiteral("Stretch drift"));
  document.waitForAnalysis();
  EXPECT_TRUE(
      std::none_of(document.findings()->begin(), document.findings()->end(),
                   [](const Finding& finding) { return finding.check == CheckId::Spacing; }));
}

TEST_F(ChangingDrift, ShowsWhatMarkedPlantsBreakWithTheirOwnDriftToo) {
  startNear();
  drag({2.2, 2.3}, {3.0, 2.7}, Qt::AltModifier | Qt::ShiftModifier);
  const int before = alertPixels();
  press({2.4, 2.5}, Qt::AltModifier);
  moveTo({2.4, 2.3}, Qt::AltModifier);
  EXPECT_EQ(alertPixels(), before) << "free ground beside their drift";
  moveTo({2.4, 1.8}, Qt::AltModifier);
  EXPECT_GT(alertPixels(), before + 20) << "free ground, but apart from their drift";
  moveTo({2.4, 2.9}, Qt::AltModifier);
  EXPECT_GT(alertPixels(), before + 20) << "among the others";
  moveTo({2.1, 2.5}, Qt::AltModifier);
  EXPECT_GT(alertPixels(), before + 20) << "on the one of their own that stays";
  release({2.1, 2.5}, Qt::AltModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Move 2 plants"));
}

}  // namespace
}  // namespace tussock::test
