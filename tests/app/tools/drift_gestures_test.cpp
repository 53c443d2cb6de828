// SPDX-License-Identifier: MIT
// 1 stretching  2 splitting and merging  3 parts of a drift  4 nudging with words  5 along a way
#include <cmath>
#include <QLabel>
#include <QPushButton>

#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "app/panels/finding_row.h"
#include "app/panels/margin_panel.h"
#include "app/tools/drift_in_hand.h"
#include "app/tools/nudge_gesture.h"
#include "core/planting/edit_drift.h"
#include "core/planting/one_piece.h"
#include "tests/app/tools/margin_field.h"
#include "tests/app/tools/planted_drifts.h"

namespace tussock::test {
namespace {

using DriftGestures = PlantedDrifts;

// 1 Stretching

TEST_F(DriftGestures, AnEndDraggedOutMakesTheDriftLongerWithTheSamePlants) {
  startPlanted();
  click(onDrift());
  const auto ids = plantIds();
  const double before = proportions();
  const auto end = handle(Handles::Kind::End, 1.0);
  ASSERT_TRUE(end);
  const Point middle = middleOf(drifted());
  drag(*end, middle + (*end - middle) * 1.5);
  EXPECT_EQ(undoLabel(), QStringLiteral("Stretch drift"));
  EXPECT_GT(proportions(), before * 1.2);
  EXPECT_EQ(plantIds(), ids);
}

TEST_F(DriftGestures, WhatShowsWhileStretchingIsWhatIsPlanted) {
  startPlanted();
  click(onDrift());
  const Point end = *handle(Handles::Kind::End, -1.0);
  const Point to = middleOf(drifted()) + Point{-1.1, 0.9};
  const auto before = positionsOf(drifted());
  press(end);
  moveTo(to);
  EXPECT_EQ(positionsOf(drifted()), before);  // nothing is in the file yet
  release(to);
  EXPECT_NE(positionsOf(drifted()), before);
  const double turn = std::atan2(-0.9, 1.1);
  EXPECT_NEAR(std::remainder(drifted().axis.radians() - turn, M_PI), 0.0, 0.03);
}

TEST_F(DriftGestures, EscapeWhileStretchingLeavesNothing) {
  startPlanted();
  click(onDrift());
  const Point end = *handle(Handles::Kind::End, 1.0);
  press(end);
  moveTo(end + Point{0.8, 0.2});
  key(Qt::Key_Escape);
  release(end + Point{0.8, 0.2});
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(DriftGestures, ALockedDriftHasNoEnds) {
  startPlanted();
  click(onDrift());
  trigger("actionLock");
  EXPECT_TRUE(drifted().locked);
  EXPECT_FALSE(handle(Handles::Kind::End, 1.0));
  trigger("actionLock");
  EXPECT_FALSE(drifted().locked);
}

// Thirteen plants 0.4 m apart in a triangular pattern take 13 x 0.1386 = 1.8 square metres.
TEST_F(DriftGestures, CountGroundAndSpacingShowWhileADriftIsInHand) {
  startPlanted();
  const QString told = QStringLiteral("13\n1.80 m² · 40 cm apart");
  click(onDrift());
  const Point turn = *handle(Handles::Kind::Turn, 1.0);
  const Point end = *handle(Handles::Kind::End, 1.0);
  const std::vector<std::pair<Point, Point>> drags{
      {drifted().plants[3].at, {0.5, 0.3}}, {turn, {0.8, -0.2}}, {end, {0.2, 0.1}}};
  for (const auto& [from, step] : drags) {
    press(from);
    moveTo(from + step);
    EXPECT_EQ(canvas().figureShown().toStdString(), told.toStdString());
    key(Qt::Key_Escape);
    release(from + step);
    EXPECT_TRUE(canvas().figureShown().isEmpty());
    click(onDrift());
  }
  EXPECT_TRUE(undoLabel().isEmpty());
}

TEST_F(DriftGestures, HowManyPlantsAreInHandShows) {
  startPlanted();
  click({1.0, 0.8});
  press({0.45, 0.6}, Qt::AltModifier | Qt::ShiftModifier);
  moveTo({1.15, 1.0}, Qt::AltModifier | Qt::ShiftModifier);
  EXPECT_TRUE(canvas().figureShown().startsWith(QStringLiteral("3\n2 of them in hand")))
      << canvas().figureShown().toStdString();
  release({1.15, 1.0}, Qt::AltModifier | Qt::ShiftModifier);
  EXPECT_TRUE(canvas().figureShown().isEmpty());
}

// 2 Splitting and merging

TEST_F(DriftGestures, BothPartsShowWhileTheLineIsDrawn) {
  startPlanted();
  key(Qt::Key_X);
  const Point middle = middleOf(drifted()) + Point{0.03, 0.0};
  press(middle + Point{0, -1.5});
  moveTo(middle + Point{0, 1.5});
  const QString shown = canvas().figureShown().section(QLatin1Char('\n'), 0, 0);
  const QString ground = canvas().figureShown().section(QLatin1Char('\n'), 1);
  EXPECT_EQ(inFile().drifts.size(), 2u) << "nothing is in the file yet";
  release(middle + Point{0, 1.5});
  std::vector<std::size_t> counts;
  for (const Id<Drift> id :
       {idIf<Drift>(document.selection()[0]).value(), idIf<Drift>(document.selection()[1]).value()})
    counts.push_back(inFile().drifts.find(id)->plants.size());
  EXPECT_EQ(shown, QStringLiteral("%1 + %2").arg(counts[0]).arg(counts[1]));
  const auto squareMetres = [](std::size_t plants) {  // at 0.4 m, in a triangular pattern
    return QString::number(0.4 * 0.4 * std::sqrt(3.0) / 2.0 * double(plants), 'f', 2);
  };
  const QString told = QStringLiteral("%1 m² + %2 m² · 40 cm apart")
                           .arg(squareMetres(counts[0]), squareMetres(counts[1]));
  EXPECT_TRUE(ground.endsWith(told)) << ground.toStdString();
  EXPECT_TRUE(canvas().figureShown().isEmpty());
}

// Of two parts neither is the drift that is selected.
TEST_F(DriftGestures, TheMarginTellsOfTheWholeWhileTheLineIsDrawn) {
  startPlanted();
  click(onDrift());
  key(Qt::Key_X);
  const Point middle = middleOf(drifted()) + Point{0.03, 0.0};
  press(middle + Point{0, -1.5});
  moveTo(middle + Point{0, 1.5});
  ASSERT_TRUE(canvas().figureShown().contains(QLatin1Char('+')));
  EXPECT_EQ(marginField(*window, "drift-plants")->text(), QStringLiteral("13"));
  EXPECT_EQ(window->findChild<QLabel*>(QStringLiteral("drift-count"))->text(),
            QStringLiteral("13"));
}

TEST_F(DriftGestures, ALineAcrossSplitsAndMergingJoinsAgain) {
  startPlanted();
  const auto before = plantIds();
  key(Qt::Key_X);
  const Point middle = middleOf(drifted()) + Point{0.03, 0.0};
  drag(middle + Point{0, -1.5}, middle + Point{0, 1.5});
  EXPECT_EQ(inFile().drifts.size(), 3u);
  EXPECT_TRUE(undoLabel().startsWith(QStringLiteral("Split drift into")))
      << undoLabel().toStdString();
  ASSERT_EQ(document.selection().size(), 2u);
  for (const Drift& each : inFile().drifts) EXPECT_EQ(each.plants.size() % 2, 1u);
  trigger("actionMerge");
  EXPECT_EQ(inFile().drifts.size(), 2u);
  const auto after = plantIds();
  EXPECT_GE(after.size(), 13u);
  EXPECT_EQ(after.size() % 2, 1u);
  std::size_t kept = 0;
  for (const Id<Plant> id : before) kept += after.count(id);
  EXPECT_GE(kept, 12u);
  trigger("actionUndo");
  trigger("actionUndo");
  EXPECT_EQ(plantIds(), before);
}

TEST_F(DriftGestures, ALineBesideEveryDriftSaysSo) {
  startPlanted();
  key(Qt::Key_X);
  drag({7.2, 4.2}, {7.8, 4.8});
  EXPECT_EQ(inFile().drifts.size(), 2u);
  EXPECT_TRUE(window->findChild<MessageBar*>()->isVisible());
}

TEST_F(DriftGestures, DriftsOfTwoSpeciesAreNotMerged) {
  startPlanted();
  document.select({refTo(drift), refTo(small)});
  trigger("actionMerge");
  EXPECT_EQ(inFile().drifts.size(), 2u);
  EXPECT_TRUE(undoLabel().isEmpty());
  EXPECT_TRUE(window->findChild<MessageBar*>()->isVisible());
}

// 3 Parts

TEST_F(DriftGestures, MarkedPlantsMoveTogether) {
  startPlanted();
  click({1.0, 0.8});
  const Drift before = *inFile().drifts.find(small);
  drag({0.45, 0.6}, {1.15, 1.0}, Qt::AltModifier | Qt::ShiftModifier);
  EXPECT_TRUE(undoLabel().isEmpty());
  drag({0.6, 0.8}, {0.7, 1.3}, Qt::AltModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Move 2 plants"));
  const Drift after = *inFile().drifts.find(small);
  for (const std::size_t i : {0u, 1u}) {
    EXPECT_NEAR(after.plants[i].at.x - before.plants[i].at.x, 0.1, 0.02);
    EXPECT_NEAR(after.plants[i].at.y - before.plants[i].at.y, 0.5, 0.02);
  }
  EXPECT_EQ(after.plants[2], before.plants[2]);
}

// 4 Nudging

TEST_F(DriftGestures, WhileAPlantMovesItSaysWhatItWouldBreak) {
  startPlanted();
  const Id<Plant> first = inFile().drifts.find(small)->plants[0].id;
  NudgeGesture gesture(canvas(), {small, first});
  gesture.move({{0.6, 0.9}, {}, {}});
  EXPECT_TRUE(gesture.words().isEmpty());
  gesture.move({{0.8, 0.8}, {}, {}});
  ASSERT_EQ(gesture.words().size(), 1);
  EXPECT_TRUE(gesture.words()[0].contains(QStringLiteral("0.34 m")))
      << gesture.words()[0].toStdString();
  gesture.move({{-0.5, 0.8}, {}, {}});
  ASSERT_EQ(gesture.words().size(), 2) << "outside the bed, and apart from its drift";
  EXPECT_EQ(gesture.words()[1], QStringLiteral("In pieces"));
}

// At 200 pixels a metre plants 0.4 m apart lie 80 pixels apart: between them no centre is near.
TEST_F(DriftGestures, BetweenThePlantsOfTheSelectedDriftItsNearestIsTaken) {
  startPlanted();
  lookAt({1.0, 0.8}, 200.0);
  click({1.0, 0.8});
  ASSERT_EQ(document.selection(), std::vector{refTo(small)});
  const auto before = positionsOf(*inFile().drifts.find(small));
  drag({1.17, 0.8}, {1.17, 1.0}, Qt::AltModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Nudge plant"));
  const auto after = positionsOf(*inFile().drifts.find(small));
  EXPECT_EQ(after[0], before[0]);
  EXPECT_NEAR(distance(after[1], {1.17, 1.0}), 0.0, 0.02);
  EXPECT_EQ(after[2], before[2]);
}

TEST_F(DriftGestures, DroppingIsTakenAndSettlingMendsIt) {
  startPlanted();
  drag({0.6, 0.8}, {0.8, 0.8}, Qt::AltModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Nudge plant"));
  key(Qt::Key_T, Qt::ControlModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Settle plants"));
  const auto places = positionsOf(*inFile().drifts.find(small));
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) EXPECT_GE(distance(places[i], places[j]), 0.34 - 1e-3);
}

TEST_F(DriftGestures, APlantDraggedOutOfTheBedSettlesBesideItsDrift) {
  startPlanted();
  drag({1.4, 0.8}, {2.0, -0.4}, Qt::AltModifier);
  ASSERT_EQ(undoLabel(), QStringLiteral("Nudge plant"));
  key(Qt::Key_T, Qt::ControlModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Settle plants"));
  const Drift after = *inFile().drifts.find(small);
  EXPECT_TRUE(inOnePiece(positionsOf(after), after.spacing));
  EXPECT_TRUE(window->messages().words().isEmpty()) << window->messages().words().toStdString();
}

// Two of its three plants are taken away: one stands too near, the other only far off.
TEST_F(DriftGestures, SettlingBringsTogetherADriftInTwoPieces) {
  startPlanted();
  drag({1.4, 0.8}, {7.0, 4.0}, Qt::AltModifier);
  drag({0.6, 0.8}, {0.9, 0.8}, Qt::AltModifier);
  ASSERT_FALSE(inOnePiece(positionsOf(*inFile().drifts.find(small)), Length::metres(0.4)));
  key(Qt::Key_T, Qt::ControlModifier);
  ASSERT_EQ(undoLabel(), QStringLiteral("Settle plants"));
  const Drift after = *inFile().drifts.find(small);
  EXPECT_TRUE(inOnePiece(positionsOf(after), after.spacing));
  EXPECT_TRUE(window->messages().words().isEmpty()) << window->messages().words().toStdString();
}

TEST_F(DriftGestures, TheFindingOfANudgeOffersTheRepair) {
  startPlanted();
  drag({0.6, 0.8}, {0.8, 0.8}, Qt::AltModifier);
  document.waitForAnalysis();
  QCoreApplication::processEvents();
  QPushButton* settle = nullptr;
  for (auto* row : window->findChildren<FindingRow*>())
    if (row->finding().check == CheckId::Spacing)
      settle = row->findChild<QPushButton*>(QStringLiteral("finding-settle"));
  ASSERT_NE(settle, nullptr);
  QTest::mouseClick(settle, Qt::LeftButton);
  EXPECT_EQ(undoLabel(), QStringLiteral("Settle 1 plant"));
  document.waitForAnalysis();
  QCoreApplication::processEvents();
  EXPECT_EQ(window->focusWidget(), &canvas()) << "the keys are meant for the plan again";
  for (const Finding& finding : *document.findings()) EXPECT_NE(finding.check, CheckId::Spacing);
}

TEST_F(DriftGestures, SettingOutAnewPlantsByTheRules) {
  startPlanted();
  drag({0.6, 0.8}, {0.95, 0.8}, Qt::AltModifier);
  key(Qt::Key_D, Qt::ControlModifier);
  EXPECT_EQ(undoLabel(), QStringLiteral("Set drift out anew"));
  const auto places = positionsOf(*inFile().drifts.find(small));
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) EXPECT_GE(distance(places[i], places[j]), 0.34 - 1e-3);
}

// 5 Along a way

TEST_F(DriftGestures, CarriedWithShiftASpeciesIsPlantedAlongTheWay) {
  startPlanted();
  CardStrip* strip = window->findChild<BenchPanel*>()->cards();
  const auto onBench = [&](Point p) {
    return strip->viewport()->mapFromGlobal(canvas().mapToGlobal(pixels(p)));
  };
  const auto carry = [&](Point p, Qt::KeyboardModifiers modifiers) {
    QMouseEvent event(QEvent::MouseMove, onBench(p), strip->viewport()->mapToGlobal(onBench(p)),
                      Qt::NoButton, Qt::LeftButton, modifiers);
    QApplication::sendEvent(strip->viewport(), &event);
  };
  QTest::mousePress(strip->viewport(), Qt::LeftButton, {}, {60, 40});
  carry({1.0, 4.2}, {});
  for (int i = 0; i <= 50; ++i) carry({1.0 + 0.12 * i, 4.2}, Qt::ShiftModifier);
  EXPECT_TRUE(window->driftInHand().planned());
  QTest::mouseRelease(strip->viewport(), Qt::LeftButton, Qt::ShiftModifier, onBench({7.0, 4.2}));
  ASSERT_EQ(inFile().drifts.size(), 3u);
  EXPECT_TRUE(undoLabel().endsWith(QStringLiteral("along a line"))) << undoLabel().toStdString();
  const Drift planted = *--inFile().drifts.end();
  EXPECT_EQ(planted.plants.size() % 2, 1u);
  EXPECT_TRUE(inOnePiece(positionsOf(planted), planted.spacing));
  const Box box = boundsOf(positionsOf(planted));
  EXPECT_GT(box.width(), 4.5);
  EXPECT_LT(box.height(), 1.5);
}

}  // namespace
}  // namespace tussock::test
