// SPDX-License-Identifier: MIT
#include "app/panels/bench_panel.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/panels/card_strip.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class BenchTest : public test::OpenYard {
 protected:
  BenchTest() : panel(document) {
    panel.resize(1200, 200);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }
  QStringList names() const {
    QStringList shown;
    for (const Species* s : panel.cards()->species())
      shown << QString::fromStdString(s->botanicalName);
    return shown;
  }
  QPushButton* chip(const char* name) const {
    return panel.findChild<QPushButton*>(QLatin1String(name));
  }
  void click(const char* name) const { QTest::mouseClick(chip(name), Qt::LeftButton); }
  // By the keys: the first letters choose an entry.
  void choose(const char* name, const QString& entry) const {
    auto* combo = panel.findChild<QComboBox*>(QLatin1String(name));
    ASSERT_GE(combo->findText(entry), 0) << qPrintable(entry);
    combo->setFocus();
    QTest::keyClick(combo, Qt::Key_Home);
    while (combo->currentText() != entry) QTest::keyClick(combo, Qt::Key_Down);
  }
  QString count() const { return panel.findChild<QLabel*>(QStringLiteral("bench-count"))->text(); }
  QPoint middleOfCard(int index) const { return panel.cards()->cardRect(index).center(); }

  BenchPanel panel;
};

TEST_F(BenchTest, ShowsEverySpeciesAtFirst) {
  EXPECT_EQ(names().size(), 4);
  EXPECT_EQ(count(), QStringLiteral("4 species"));
}

// 4 ft are 1.22 m, as 1 ft is 0.3048 m.
TEST_F(BenchTest, HeightsAreInTheUnitsOfTheYardAndFollowThem) {
  const auto* heights = panel.findChild<QComboBox*>(QStringLiteral("bench-height"));
  const auto setUnits = [&](UnitSystem units) {
    Draft draft(document.yard());
    Settings settings = draft.yard().settings;
    settings.units = units;
    draft.put(settings);
    ASSERT_TRUE(document.commit(draft.finish("Change units")));
  };
  setUnits(UnitSystem::Metres);
  EXPECT_GE(heights->findText(QStringLiteral("Up to 1.22 m")), 0);
  choose("bench-height", QStringLiteral("Up to 1.22 m"));
  const QStringList shown = names();
  setUnits(UnitSystem::FeetInches);
  EXPECT_EQ(heights->currentText(), QStringLiteral("Up to 4' 0\""));
  EXPECT_EQ(names(), shown);
}

TEST_F(BenchTest, TypingNarrowsTheCardsAndEscapeBringsThemBack) {
  QTest::keyClicks(panel.searchField(), QStringLiteral("bluestem"));
  EXPECT_EQ(names(), QStringList{QStringLiteral("Schizachyrium scoparium")});
  EXPECT_EQ(count(), QStringLiteral("1 of 4 species"));
  QTest::keyClick(panel.searchField(), Qt::Key_Escape);
  EXPECT_EQ(names().size(), 4);
}

TEST_F(BenchTest, ChipsOfOneRowAddAndRowsNarrow) {
  click("chip-shade");
  EXPECT_EQ(names(), QStringList{QStringLiteral("Adiantum pedatum")});
  click("chip-part");
  EXPECT_EQ(names().size(), 2);
  click("chip-forb");
  EXPECT_EQ(names(), QStringList{QStringLiteral("Symphyotrichum laeve")});
  click("chip-forb"), click("chip-part"), click("chip-shade");
  EXPECT_EQ(names().size(), 4);
}

TEST_F(BenchTest, FitsHereAppliesWhileABedIsSelected) {
  EXPECT_FALSE(chip("chip-fits")->isEnabled());
  document.select({refTo(bed)});
  EXPECT_TRUE(chip("chip-fits")->isChecked());
  document.waitForAnalysis();  // an open bed: too much sun for the fern, too moist for the grass
  EXPECT_EQ(count(), QStringLiteral("2 of 4 fit this bed"));
  click("chip-fits");
  EXPECT_EQ(names().size(), 4);
  document.select({});
  document.select({refTo(bed)});
  EXPECT_FALSE(chip("chip-fits")->isChecked()) << "turned off by hand, it stays off";
}

TEST_F(BenchTest, SaysWhyWhatIsSearchedForIsLeftOut) {
  document.select({refTo(bed)});
  document.waitForAnalysis();
  QTest::keyClicks(panel.searchField(), QStringLiteral("bluestem"));
  EXPECT_TRUE(names().isEmpty());
  const QString words = panel.cards()->emptyText();
  EXPECT_TRUE(words.contains(QStringLiteral("little bluestem does not fit this bed")))
      << qPrintable(words);
  EXPECT_TRUE(words.contains(QStringLiteral("asks for dry"))) << qPrintable(words);
  click("chip-fits");
  EXPECT_EQ(names().size(), 1);
}

TEST_F(BenchTest, LeftOutShowsEachWithTheReason) {
  document.select({refTo(bed)});
  document.waitForAnalysis();
  click("chip-more");
  click("chip-left-out");
  EXPECT_EQ(count(), QStringLiteral("2 of 4 left out"));
  EXPECT_EQ(names(), (QStringList{QStringLiteral("Adiantum pedatum"),
                                  QStringLiteral("Schizachyrium scoparium")}));
  EXPECT_TRUE(panel.cards()->notes().back().contains(QStringLiteral("asks for dry")));
  click("chip-left-out");
  EXPECT_EQ(names().size(), 2);
  EXPECT_TRUE(panel.cards()->notes().isEmpty());
}

TEST_F(BenchTest, LeftOutSaysWhetherNothingIsOrNoneOfThoseAskedFor) {
  document.select({refTo(bed)});
  document.waitForAnalysis();
  click("chip-more");
  click("chip-left-out");
  QTest::keyClicks(panel.searchField(), QStringLiteral("symphyotrichum"));
  EXPECT_TRUE(names().isEmpty());
  EXPECT_EQ(panel.cards()->emptyText(), QStringLiteral("None of those is left out of this bed."));
  QTest::keyClicks(panel.searchField(), QStringLiteral("zzz"));
  EXPECT_TRUE(panel.cards()->emptyText().startsWith(QStringLiteral("No species answers to all")))
      << qPrintable(panel.cards()->emptyText());
}

TEST_F(BenchTest, FiltersOfTheSecondRowCombineWithTheFirst) {
  click("chip-more");
  choose("bench-month", QStringLiteral("August"));
  EXPECT_EQ(names().size(), 3) << "not the fern";
  click("chip-forb");
  EXPECT_EQ(names().size(), 2);
  choose("bench-height", QStringLiteral("Up to 24 in"));
  EXPECT_TRUE(names().isEmpty()) << "all are 0.9 m high";
  choose("bench-height", QStringLiteral("Any height"));
  choose("bench-month", QStringLiteral("January"));
  EXPECT_TRUE(names().isEmpty());
}

TEST_F(BenchTest, WhereDeerAreAboutWhatTheyEatDoesNotFit) {
  document.setPersonalPlants({{{}, "Echinacea purpurea", {{"deer_resistant", "no"}}}});
  document.select({refTo(bed)});
  document.waitForAnalysis();
  click("chip-more");
  EXPECT_TRUE(names().contains(QStringLiteral("Echinacea purpurea")));
  click("chip-deer-about");
  EXPECT_EQ(onDisk().settings.deerAbout, DeerAbout::Yes) << "a fact of the yard, kept with it";
  EXPECT_FALSE(names().contains(QStringLiteral("Echinacea purpurea")));
  click("chip-left-out");
  EXPECT_TRUE(panel.cards()->notes().join(' ').contains(QStringLiteral("deer eat it")));
  document.undo();
  EXPECT_FALSE(chip("chip-deer-about")->isChecked());
}

TEST_F(BenchTest, TheOrderIsChosen) {
  click("chip-more");
  choose("bench-order", QStringLiteral("Common name"));
  EXPECT_EQ(names().front(), QStringLiteral("Echinacea purpurea")) << "coneflower";
  EXPECT_EQ(names().back(), QStringLiteral("Symphyotrichum laeve")) << "smooth aster";
}

TEST_F(BenchTest, CardsKeepTheirOrderWhileOnePlants) {
  document.select({refTo(bed)});
  document.waitForAnalysis();
  const QStringList before = names();
  plant("Echinacea purpurea", 5, {4, 2});
  document.waitForAnalysis();
  EXPECT_EQ(names(), before);
  document.select({});
  document.select({refTo(bed)});
  EXPECT_EQ(names().back(), QStringLiteral("Echinacea purpurea")) << "it grows here already";
}

TEST_F(BenchTest, ADoubleClickOrTheSpaceBarAsksForTheFacts) {
  QSignalSpy wanted(&panel, &BenchPanel::factsWanted);
  QTest::mouseDClick(panel.cards()->viewport(), Qt::LeftButton, {}, middleOfCard(1));
  QTest::keyClick(panel.cards(), Qt::Key_Space);
  ASSERT_EQ(wanted.count(), 2);
  EXPECT_EQ(wanted[0][0].toString(), names()[1]);
}

TEST_F(BenchTest, DraggingACardOutLiftsCarriesAndDropsIt) {
  QSignalSpy lifted(&panel, &BenchPanel::speciesLifted),
      carried(&panel, &BenchPanel::speciesCarried), dropped(&panel, &BenchPanel::speciesDropped),
      back(&panel, &BenchPanel::speciesPutBack);
  QWidget* cards = panel.cards()->viewport();
  QTest::mousePress(cards, Qt::LeftButton, {}, middleOfCard(1));
  EXPECT_EQ(lifted.count(), 0);
  QTest::mouseMove(cards, middleOfCard(1) - QPoint(0, 30));
  ASSERT_EQ(lifted.count(), 1);
  EXPECT_EQ(lifted[0][0].toString(), names()[1]);
  const QPoint above(200, -120);
  QTest::mouseMove(cards, above);
  ASSERT_GE(carried.count(), 1);
  EXPECT_EQ(carried.last()[0].toPoint(), cards->mapToGlobal(above));
  QTest::mouseRelease(cards, Qt::LeftButton, {}, above);
  ASSERT_EQ(dropped.count(), 1);
  EXPECT_EQ(dropped[0][0].toPoint(), cards->mapToGlobal(above));
  EXPECT_EQ(back.count(), 0);
}

TEST_F(BenchTest, PlusAndMinusWorkWhileASpeciesIsInHandAndEscapePutsItBack) {
  QSignalSpy steps(&panel, &BenchPanel::countStepped), back(&panel, &BenchPanel::speciesPutBack),
      dropped(&panel, &BenchPanel::speciesDropped);
  QWidget* cards = panel.cards()->viewport();
  QTest::mousePress(cards, Qt::LeftButton, {}, middleOfCard(0));
  QTest::mouseMove(cards, QPoint(200, -120));
  QTest::keyClick(panel.cards(), Qt::Key_Plus);
  QTest::keyClick(panel.cards(), Qt::Key_Minus);
  ASSERT_EQ(steps.count(), 2);
  EXPECT_EQ(steps[0][0].toInt(), 1);
  EXPECT_EQ(steps[1][0].toInt(), -1);
  QTest::keyClick(panel.cards(), Qt::Key_Escape);
  EXPECT_EQ(back.count(), 1);
  QTest::mouseRelease(cards, Qt::LeftButton, {}, QPoint(200, -120));
  EXPECT_EQ(dropped.count(), 0);
}

TEST_F(BenchTest, LettingGoOverTheBenchPutsItBack) {
  QSignalSpy back(&panel, &BenchPanel::speciesPutBack),
      dropped(&panel, &BenchPanel::speciesDropped);
  QWidget* cards = panel.cards()->viewport();
  QTest::mousePress(cards, Qt::LeftButton, {}, middleOfCard(0));
  QTest::mouseMove(cards, middleOfCard(2));
  QTest::mouseRelease(cards, Qt::LeftButton, {}, middleOfCard(2));
  EXPECT_EQ(back.count(), 1);
  EXPECT_EQ(dropped.count(), 0);
}

TEST_F(BenchTest, KeysReachEveryCardAndEnterLifts) {
  QSignalSpy lifted(&panel, &BenchPanel::speciesLifted);
  QTest::keyClick(panel.searchField(), Qt::Key_Down);
  CardStrip* cards = panel.cards();
  QTest::keyClick(cards, Qt::Key_End);
  QTest::keyClick(cards, Qt::Key_Left);
  EXPECT_EQ(cards->current(), cards->species()[2]);
  QTest::keyClick(cards, Qt::Key_Return);
  ASSERT_EQ(lifted.count(), 1);
  EXPECT_EQ(lifted[0][0].toString(), names()[2]);
}

TEST_F(BenchTest, NothingFoundSaysWhatToDo) {
  QTest::keyClicks(panel.searchField(), QStringLiteral("zzz"));
  EXPECT_TRUE(names().isEmpty());
  EXPECT_EQ(panel.cards()->current(), nullptr);
  QTest::keyClick(panel.cards(), Qt::Key_Return);  // and lifts nothing
}

}  // namespace
}  // namespace tussock
