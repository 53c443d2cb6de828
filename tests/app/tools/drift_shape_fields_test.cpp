// SPDX-License-Identifier: MIT
// The shape of a drift, typed into the margin.
#include <algorithm>
#include <cmath>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "app/panels/margin_panel.h"
#include "core/geometry/overlay.h"
#include "tests/app/tools/margin_field.h"
#include "tests/app/tools/planted_drifts.h"

namespace tussock::test {
namespace {

class ShapeFields : public PlantedDrifts {
 protected:
  void startSelected() {
    startPlanted();
    click(onDrift());
  }
  [[nodiscard]] QLineEdit* field(const char* name) const { return marginField(*window, name); }
  void enter(const char* name, const QString& typed) { enterInMargin(*window, name, typed); }
  void choosePattern(Pattern pattern) {
    auto* choice =
        window->findChild<MarginPanel*>()->findChild<QComboBox*>(QStringLiteral("drift-pattern"));
    ASSERT_NE(choice, nullptr);
    choice->setFocus();
    while (choice->currentIndex() < int(pattern)) QTest::keyClick(choice, Qt::Key_Down);
  }
};

// A plant takes s² √3/2 of ground, so that 13 at 0.4 m and 8.3 at 0.5 m take the same.
TEST_F(ShapeFields, ASpacingIsAnsweredByTheCountOnTheSameGround) {
  startSelected();
  enter("drift-spacing", QStringLiteral("0.5"));
  EXPECT_EQ(drifted().spacing, Length::metres(0.5));
  EXPECT_EQ(drifted().plants.size(), 9u);
  EXPECT_EQ(field("drift-plants")->text(), QStringLiteral("9"));
  const auto places = positionsOf(drifted());
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) EXPECT_GE(distance(places[i], places[j]), 0.425 - 1e-3);
}

TEST_F(ShapeFields, ACountIsAnsweredByTheSpacingOnTheSameGround) {
  startSelected();
  const QString ground = field("drift-ground")->text();
  enter("drift-plants", QStringLiteral("21"));
  EXPECT_EQ(drifted().plants.size(), 21u);
  EXPECT_NEAR(drifted().spacing.metres(), 0.4 * std::sqrt(13.0 / 21.0), 1e-9);
  EXPECT_EQ(field("drift-spacing")->text(), QStringLiteral("31 cm"));
  EXPECT_EQ(field("drift-ground")->text(), ground);
}

TEST_F(ShapeFields, ACountTooLargeForItsGroundIsRefusedWithWords) {
  startSelected();
  enter("drift-plants", QStringLiteral("2001"));
  EXPECT_EQ(drifted().plants.size(), 13u);
  auto* wrong = window->findChild<QLabel*>(QStringLiteral("drift-plants-wrong"));
  ASSERT_NE(wrong, nullptr);
  EXPECT_TRUE(wrong->text().contains(QStringLiteral("would stand"))) << wrong->text().toStdString();
}

// 3 m² hold 21.65 plants at 0.4 m.
TEST_F(ShapeFields, GroundIsAnsweredByTheCountWhereTheDriftStands) {
  startSelected();
  const auto before = plantIds();
  enter("drift-ground", QStringLiteral("3"));
  EXPECT_EQ(drifted().spacing, Length::metres(0.4));
  EXPECT_EQ(drifted().plants.size(), 21u);
  const auto after = plantIds();
  EXPECT_TRUE(std::includes(after.begin(), after.end(), before.begin(), before.end()));
}

TEST_F(ShapeFields, ASquarePatternStandsInRows) {
  startSelected();
  choosePattern(Pattern::Square);
  ASSERT_EQ(drifted().pattern, Pattern::Square);
  const Point first = drifted().plants.front().at;
  for (const Plant& plant : drifted().plants) {
    const Point cells = rotated(plant.at - first, -drifted().axis) * (1.0 / 0.4);
    EXPECT_NEAR(cells.x, std::round(cells.x), 1e-6);
    EXPECT_NEAR(cells.y, std::round(cells.y), 1e-6);
  }
}

TEST_F(ShapeFields, LengthToWidthIsReadAndItsBoundsAreSaid) {
  startSelected();
  enter("drift-stretch", QStringLiteral("6"));
  EXPECT_EQ(drifted().stretch, 6.0);
  enter("drift-stretch", QStringLiteral("60"));
  EXPECT_EQ(drifted().stretch, 6.0);
}

// Thirteen plants asked to be ten times as long as wide come to some five times.
TEST_F(ShapeFields, WhereItStandsOtherwiseThanAskedBothAreShown) {
  startSelected();
  auto* stands = window->findChild<QLabel*>(QStringLiteral("drift-stands"));
  ASSERT_NE(stands, nullptr);
  EXPECT_EQ(stands->text(), QString());
  const double most = 10.0;
  enter("drift-stretch", QString::number(most));
  ASSERT_EQ(drifted().stretch, most);
  EXPECT_EQ(field("drift-stretch")->text(), QStringLiteral("10"));
  const OrientedRectangle box = smallestRectangle(positionsOf(drifted()), drifted().spacing / 2.0);
  ASSERT_LT(box.length / box.width, 0.8 * most);
  EXPECT_EQ(
      stands->text(),
      QStringLiteral("asked, stands %1").arg(QLocale().toString(box.length / box.width, 'f', 1)));
  QCoreApplication::processEvents();
  EXPECT_TRUE(stands->isVisible());
  EXPECT_GE(stands->width(), stands->sizeHint().width()) << "nothing is cut off";
  EXPECT_LT(stands->geometry().right(), field("drift-stretch")->width());
  EXPECT_GT(
      stands->geometry().left(),
      field("drift-stretch")->fontMetrics().horizontalAdvance(field("drift-stretch")->text()));
  enter("drift-stretch", QStringLiteral("3"));
  EXPECT_EQ(stands->text(), QString());
}

// A refused value goes with Escape, wherever the focus has gone meanwhile.
class RefusedShape : public ShapeFields {
 protected:
  void refuse(const char* name, const char* typed) {
    before_ = field(name)->text();
    enter(name, QLatin1String(typed));
    ASSERT_EQ(QApplication::focusWidget(), field(name));
    ASSERT_EQ(field(name)->text(), QLatin1String(typed));
    ASSERT_TRUE(field(name)->property("wrong").toBool());
  }
  void expectAsBefore(const char* name) const {
    EXPECT_EQ(field(name)->text(), before_);
    EXPECT_FALSE(field(name)->property("wrong").toBool());
    EXPECT_TRUE(document.selection() == std::vector{refTo(drift)}) << "Escape had a use";
  }
  QString before_;
};

TEST_F(RefusedShape, GoesWithEscapeInItsField) {
  startSelected();
  for (const auto& [name, typed] :
       {std::pair{"drift-spacing", "0"}, std::pair{"drift-plants", "99999999"}}) {
    refuse(name, typed);
    QTest::keyClick(field(name), Qt::Key_Escape);
    expectAsBefore(name);
  }
}

TEST_F(RefusedShape, GoesWithEscapeInAnotherField) {
  startSelected();
  refuse("drift-spacing", "0");
  QTest::keyClick(field("drift-spacing"), Qt::Key_Tab);
  QTest::keyClick(field("drift-plants"), Qt::Key_Escape);
  expectAsBefore("drift-spacing");
}

TEST_F(RefusedShape, GoesWithEscapeOnThePlan) {
  startSelected();
  refuse("drift-plants", "99999999");
  trigger("toolMeasure");
  canvas().setFocus();
  key(Qt::Key_Escape);
  expectAsBefore("drift-plants");
}

// A bed that the drift fills: no more than stand there fit at this spacing.
class FullGround : public ShapeFields {
 protected:
  void startFull(int count) {
    YardBuilder builder;
    builder.units(UnitSystem::Metres);
    builder.bed("Front", "POLYGON((0 0,2.2 0,2.2 1.3,0 1.3,0 0))").viewing("S");
    GrowRequest request;
    request.bed = builder.lastBed();
    request.spacing = Length::metres(0.4);
    request.count = kAsManyAsFit;
    request.at = {1.1, 0.65};
    most_ = int(growDrift(builder.build(), request).places.size());
    request.count = count;
    builder.drift("Echinacea purpurea", growDrift(builder.build(), request).places);
    drift = builder.lastDrift();
    start(builder.build());
    lookAt({1.1, 0.65});
    click(onDrift());
    ASSERT_EQ(document.selection(), std::vector{refTo(drift)});
  }
  // Each plant takes s² √3/2.
  void askGroundFor(int count) {
    enter("drift-ground", QString::number(count * 0.16 * std::sqrt(3.0) / 2.0, 'f', 4));
  }
  [[nodiscard]] QString said(const char* name) const {
    const auto* words = window->findChild<QLabel*>(QLatin1String(name) + QStringLiteral("-wrong"));
    return words && words->isVisible() ? words->text() : QString();
  }
  [[nodiscard]] MessageBar* bar() const { return window->findChild<MessageBar*>(); }
  int most_ = 0;  // that the bed takes
};

TEST_F(FullGround, SaysHowManyOfTheGroundAskedForFit) {
  startFull(kAsManyAsFit);
  const Drift before = drifted();
  ASSERT_EQ(int(before.plants.size()), most_);
  askGroundFor(most_ + 4);
  EXPECT_EQ(drifted(), before);
  EXPECT_TRUE(said("drift-ground")
                  .startsWith(QStringLiteral("%1 of %2 fit here.").arg(most_).arg(most_ + 4)))
      << said("drift-ground").toStdString();
  EXPECT_FALSE(said("drift-ground").contains(QStringLiteral("Undo")));
}

TEST_F(FullGround, SpeaksOfUndoOnlyWherePlantsWereLost) {
  startFull(3);
  askGroundFor(most_ + 8);
  const auto grown = int(drifted().plants.size());
  ASSERT_GT(grown, 3);
  EXPECT_EQ(said("drift-ground"), QStringLiteral("%1 of %2 fit here.").arg(grown).arg(most_ + 8));
}

TEST_F(FullGround, WhatAPatternCostIsToldUntilTheNextEdit) {
  startFull(kAsManyAsFit);
  choosePattern(Pattern::Single);
  ASSERT_LT(int(drifted().plants.size()), most_);
  EXPECT_TRUE(bar()->words().contains(QStringLiteral("Undo brings the others back")));
  enter("drift-stretch", QStringLiteral("2"));
  EXPECT_FALSE(bar()->isVisible()) << bar()->words().toStdString();
}

TEST_F(FullGround, WhatAPatternCostIsToldUntilItIsTakenBack) {
  startFull(kAsManyAsFit);
  choosePattern(Pattern::Single);
  ASSERT_TRUE(bar()->isVisible());
  key(Qt::Key_Z, Qt::ControlModifier);
  while (int(drifted().plants.size()) < most_ && document.undoLabel())
    key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(int(drifted().plants.size()), most_);
  EXPECT_FALSE(bar()->isVisible()) << bar()->words().toStdString();
}

}  // namespace
}  // namespace tussock::test
