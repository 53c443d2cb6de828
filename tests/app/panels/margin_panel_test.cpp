// SPDX-License-Identifier: MIT
#include "app/panels/margin_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTest>

#include "app/panels/field_text.h"
#include "app/panels/findings_list.h"
#include "core/checks/registry.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class MarginTest : public test::OpenYard {
 protected:
  MarginTest() : panel(document) {
    panel.resize(336, 900);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }
  template <class W>
  W* shown(const char* name) const {
    for (W* found : panel.findChildren<W*>(QLatin1String(name)))
      if (found->isVisibleTo(&panel)) return found;
    ADD_FAILURE() << "no " << name << " shown";
    return nullptr;
  }
  void click(const char* name) const {
    QCoreApplication::processEvents();  // rows just put in get their places
    QTest::mouseClick(shown<QPushButton>(name), Qt::LeftButton);
  }
  void type(const char* field, const QString& text) const {
    auto* line = shown<QLineEdit>(field);
    line->selectAll();
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
  }
  // A drift with one plant far too near another: a finding at least.
  Id<Drift> crowdedDrift() {
    const auto id = plant("Echinacea purpurea", 5, {4, 2});
    Drift crowded = *document.yard().drifts.find(id);
    crowded.plants[1].at = crowded.plants[0].at + Point{0.05, 0};
    document.commit(put(crowded, "Move plant"));
    document.waitForAnalysis();
    return id;
  }

  MarginPanel panel;
};

TEST_F(MarginTest, NothingSelectedShowsTheYard) {
  EXPECT_EQ(shown<QLabel>("margin-heading")->text(), QStringLiteral("The yard"));
  EXPECT_EQ(shown<QLineEdit>("yard-name")->text(), QStringLiteral("Test yard"));
}

TEST_F(MarginTest, PlusAndMinusChangeTheCountInTheFile) {
  const auto id = plant("Echinacea purpurea", 5, {4, 2});
  document.select({refTo(id)});
  EXPECT_EQ(shown<QLabel>("drift-count")->text(), QStringLiteral("5"));
  click("drift-more");
  EXPECT_EQ(onDisk().drifts.find(id)->plants.size(), 7u);
  EXPECT_EQ(shown<QLabel>("drift-count")->text(), QStringLiteral("7"));
  click("drift-fewer");
  click("drift-fewer");
  EXPECT_EQ(onDisk().drifts.find(id)->plants.size(), 3u);
  document.undo();
  EXPECT_EQ(shown<QLabel>("drift-count")->text(), QStringLiteral("5"));
}

TEST_F(MarginTest, AFieldMakesOneEditOnEnter) {
  document.select({refTo(bed)});
  QSignalSpy changed(&document, &Document::changed);
  type("bed-name", QStringLiteral("Gate bed"));
  EXPECT_EQ(onDisk().beds.find(bed)->name, "Gate bed");
  EXPECT_EQ(changed.count(), 1);
  EXPECT_EQ(document.undoLabel(), QStringLiteral("Change name"));
}

TEST_F(MarginTest, LeavingAFieldMakesTheEditAndLeavingItAloneMakesNone) {
  document.select({refTo(bed)});
  auto* name = shown<QLineEdit>("bed-name");
  name->setFocus();
  name->selectAll();
  QTest::keyClicks(name, QStringLiteral("Porch"));
  QSignalSpy changed(&document, &Document::changed);
  QTest::keyClick(name, Qt::Key_Tab);
  EXPECT_EQ(onDisk().beds.find(bed)->name, "Porch");
  shown<QLineEdit>("bed-setback")->setFocus();
  name->setFocus();
  EXPECT_EQ(changed.count(), 1);
}

TEST_F(MarginTest, ATickSaysThatPlantsStandThereAndTheTotalsTellThemApart) {
  const auto id = plant("Echinacea purpurea", 5, {4, 2});
  plant("Echinacea purpurea", 3, {2, 2});
  document.select({refTo(id)});
  auto* tick = shown<QCheckBox>("drift-existing");
  tick->click();
  EXPECT_TRUE(onDisk().drifts.find(id)->existing());
  EXPECT_TRUE(shown<QLabel>("margin-totals")
                  ->text()
                  .startsWith(QStringLiteral("3 to plant, 5 existing · 1 species")));
  tick->click();
  EXPECT_FALSE(onDisk().drifts.find(id)->existing());
  EXPECT_TRUE(shown<QLabel>("margin-totals")->text().startsWith(QStringLiteral("8 plants · ")));
  document.undo();
  EXPECT_TRUE(tick->isChecked());
}

TEST_F(MarginTest, ABadLengthIsSaidAndChangesNothing) {
  document.select({refTo(bed)});
  const Yard before = document.yard();
  type("bed-setback", QStringLiteral("12 fo"));
  auto* wrong = shown<QLabel>("bed-setback-wrong");
  ASSERT_TRUE(wrong);
  EXPECT_TRUE(wrong->text().contains(QStringLiteral("12 fo")));
  EXPECT_EQ(document.yard(), before);
  EXPECT_FALSE(document.undoLabel());
  auto* line = shown<QLineEdit>("bed-setback");
  EXPECT_EQ(line->text(), QStringLiteral("12 fo")) << "what was typed is kept to be mended";
  QTest::keyClick(line, Qt::Key_Escape);
  EXPECT_EQ(line->text(), QString());
  EXPECT_FALSE(wrong->isVisible());
}

TEST_F(MarginTest, ARefusedValueGivesWayToWhatIsSoOnceItChanges) {
  document.select({refTo(bed)});
  type("bed-setback", QStringLiteral("12 fo"));
  auto* line = shown<QLineEdit>("bed-setback");
  Bed changed = *document.yard().beds.find(bed);
  changed.setback = Length::metres(0.3048);
  document.commit(put(changed, "Change setback"));
  EXPECT_EQ(line->text(), lengthText(Length::metres(0.3048), document.yard().settings.units));
  EXPECT_FALSE(line->property("wrong").toBool());
  EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("bed-setback-wrong"))->isVisible());
}

TEST_F(MarginTest, UndoingTakesARefusedValueBackToo) {
  document.select({refTo(bed)});
  type("bed-name", QStringLiteral("Gate bed"));
  type("bed-setback", QStringLiteral("12 fo"));
  auto* line = shown<QLineEdit>("bed-setback");
  ASSERT_TRUE(line->property("wrong").toBool());
  type("bed-name", QStringLiteral("Porch"));
  EXPECT_EQ(line->text(), QStringLiteral("12 fo")) << "an edit elsewhere leaves it to be mended";
  document.undo();
  EXPECT_EQ(line->text(), QString());
  EXPECT_FALSE(line->property("wrong").toBool());
}

TEST_F(MarginTest, AGoodLengthIsKeptInMetres) {
  document.select({refTo(bed)});
  type("bed-setback", QStringLiteral("1' 6\""));
  EXPECT_DOUBLE_EQ(onDisk().beds.find(bed)->setback->metres(), 0.4572);
  type("bed-setback", QString());
  EXPECT_FALSE(onDisk().beds.find(bed)->setback);
}

TEST_F(MarginTest, ARoofThatRisesAsksForItsRidge) {
  Building house;
  house.id = Id<Building>(40);
  house.footprint = rectangle({0, 6}, {8, 12});
  document.commit(put(house, "Draw building"));
  document.select({refTo(house.id)});
  auto* roof = shown<QComboBox>("building-roof");
  QTest::keyClick(roof, Qt::Key_Down);
  EXPECT_EQ(document.yard().buildings.find(house.id)->roof, Roof::Gable);
  EXPECT_GT(document.yard().buildings.find(house.id)->ridge, house.eave);
  type("building-ridge", QStringLiteral("2 m"));
  EXPECT_TRUE(shown<QLabel>("building-ridge-wrong")) << "below the eave";
  type("building-ridge", QStringLiteral("5.5 m"));
  EXPECT_DOUBLE_EQ(document.yard().buildings.find(house.id)->ridge.metres(), 5.5);
}

TEST_F(MarginTest, AcceptingAFindingNeedsAReasonAndIsKeptWithTheYard) {
  crowdedDrift();
  ASSERT_FALSE(document.findings()->empty());
  const auto open = document.findings()->size();
  click("finding-accept");
  click("finding-accept-now");
  EXPECT_TRUE(shown<QLabel>("finding-reason-wrong")) << "no reason given";
  EXPECT_TRUE(document.yard().acceptances.empty());
  type("finding-reason", QStringLiteral("They were here before"));
  const Yard kept = onDisk();
  ASSERT_EQ(kept.acceptances.size(), 1u);
  EXPECT_EQ(kept.acceptances.begin()->reason, "They were here before");
  EXPECT_EQ(shown<QLabel>("findings-count")->text(),
            QStringLiteral("%1 open · 1 accepted").arg(open - 1));
  click("findings-unfold");
  click("finding-reopen");
  EXPECT_TRUE(onDisk().acceptances.empty());
  document.undo();
  EXPECT_EQ(onDisk().acceptances.size(), 1u);
}

TEST_F(MarginTest, ASmallMarginKeepsTheFindingsButtonsInSight) {
  crowdedDrift();
  panel.resize(336, 420);
  QTest::qWait(20);
  const auto* area = panel.findChild<QScrollArea*>(QStringLiteral("margin-findings"));
  const auto inSight = [area](const QWidget* part) {
    const QRect box(part->mapTo(area->viewport(), QPoint()), part->size());
    return part->isVisible() && area->viewport()->rect().contains(box);
  };
  EXPECT_TRUE(inSight(shown<QPushButton>("finding-accept")));
  click("finding-accept");
  QTest::qWait(20);
  auto* now = shown<QPushButton>("finding-accept-now");
  EXPECT_TRUE(inSight(now));
  EXPECT_TRUE(inSight(shown<QLineEdit>("finding-reason")));
  QTest::mouseClick(now, Qt::LeftButton);
  QTest::qWait(20);
  EXPECT_TRUE(inSight(shown<QLabel>("finding-reason-wrong")));
  EXPECT_TRUE(inSight(shown<QLineEdit>("finding-reason")));
  EXPECT_TRUE(inSight(now));
}

TEST_F(MarginTest, ShowTellsWhichFinding) {
  crowdedDrift();
  std::vector<Finding> chosen;
  QObject::connect(&panel, &MarginPanel::findingChosen, &panel,
                   [&](const Finding& finding) { chosen.push_back(finding); });
  click("finding-show");
  ASSERT_EQ(chosen.size(), 1u);
  EXPECT_EQ(chosen[0], document.findings()->front());
}

TEST_F(MarginTest, EscapeLeavesAFindingOpen) {
  crowdedDrift();
  click("finding-accept");
  QTest::keyClick(shown<QLineEdit>("finding-reason"), Qt::Key_Escape);
  EXPECT_TRUE(shown<QPushButton>("finding-accept"));
  EXPECT_TRUE(document.yard().acceptances.empty());
}

TEST_F(MarginTest, TotalsFollowEveryEdit) {
  EXPECT_EQ(shown<QLabel>("margin-totals")->text(),
            QStringLiteral("0 plants · 0 species · 0 % of the ground taken"));
  plant("Echinacea purpurea", 5, {4, 2});
  // 5 plants at 0.4 m take 5 x 0.1386 m² of 32 m².
  EXPECT_EQ(shown<QLabel>("margin-totals")->text(),
            QStringLiteral("5 plants · 1 species · 2 % of the ground taken"));
}

TEST_F(MarginTest, PlaceAndFrostDatesAreReadAsPeopleWriteThem) {
  type("yard-latitude", QStringLiteral("41° 30' N"));
  type("yard-first-frost", QStringLiteral("Oct 5"));
  EXPECT_DOUBLE_EQ(onDisk().settings.latitude.degrees(), 41.5);
  EXPECT_EQ(onDisk().settings.firstFrost, (MonthDay{std::chrono::October, std::chrono::day{5}}));
  type("yard-zone", QStringLiteral("17z"));
  EXPECT_TRUE(shown<QLabel>("yard-zone-wrong"));
  EXPECT_EQ(onDisk().settings.hardinessZone, "");
}

TEST_F(MarginTest, FrostDatesThatLeaveNoSummerAreRefused) {
  type("yard-last-frost", QStringLiteral("20 April"));
  const auto before = onDisk().settings.firstFrost;
  type("yard-first-frost", QStringLiteral("1 June"));
  ASSERT_TRUE(shown<QLabel>("yard-first-frost-wrong"));
  EXPECT_TRUE(shown<QLabel>("yard-first-frost-wrong")->text().contains(QStringLiteral("equator")));
  EXPECT_EQ(onDisk().settings.firstFrost, before);
}

}  // namespace
}  // namespace tussock
