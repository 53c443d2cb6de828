// SPDX-License-Identifier: MIT
#include "app/panels/fill_panel.h"

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QTest>
#include <QWheelEvent>

#include "app/panels/arrangement_picture.h"
#include "app/panels/margin_panel.h"
#include "core/edit/draft.h"
#include "core/planting/arrangements.h"
#include "core/planting/published_figures.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class FillPanelTest : public test::OpenYard {
 protected:
  FillPanelTest() : panel(document) {
    panel.resize(336, 1400);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    document.select({refTo(bed)});
    document.waitForAnalysis();
  }

  template <class W>
  W* shown(const char* name) const {
    QCoreApplication::processEvents();
    for (W* found : panel.findChildren<W*>(QLatin1String(name)))
      if (found->isVisibleTo(&panel)) return found;
    ADD_FAILURE() << "no " << name << " shown";
    return nullptr;
  }
  void click(const char* name) const {
    QTest::mouseClick(shown<QPushButton>(name), Qt::LeftButton);
  }
  void list(const char* species) const {
    auto* line = shown<QLineEdit>("plant-list-add");
    QTest::keyClicks(line, QLatin1String(species));
    QTest::keyClick(line, Qt::Key_Return);
  }
  void listThree() const {
    list("Echinacea purpurea"), list("Schizachyrium scoparium"), list("Symphyotrichum laeve");
  }
  // Presses the button and waits for the filling to end.
  void fillWith(const char* name) {
    QSignalSpy ended(&panel.filling(), &Filling::ended);
    click(name);
    ASSERT_TRUE(panel.filling().running());
    ASSERT_TRUE(ended.wait(30000));
  }
  [[nodiscard]] std::vector<std::vector<Point>> placesOnDisk() const {
    std::vector<std::vector<Point>> places;
    for (const Drift& drift : onDisk().drifts) places.push_back(positionsOf(drift));
    return places;
  }

  [[nodiscard]] std::set<std::string> speciesOnDisk() const {
    std::set<std::string> species;
    for (const Drift& drift : onDisk().drifts)
      if (drift.bed == bed) species.insert(drift.species);
    return species;
  }

  MarginPanel panel;
};

TEST_F(FillPanelTest, SpeciesTypedByNameGoOnTheList) {
  listThree();
  const Yard yard = onDisk();
  const auto& list = yard.beds.find(bed)->plantList;
  ASSERT_EQ(list.size(), 3u);
  EXPECT_EQ(list[0], (ListedSpecies{"Echinacea purpurea", 0.0}));
  EXPECT_EQ(list[2].species, "Symphyotrichum laeve");
}

TEST_F(FillPanelTest, TheFocusComesBackToTheButtonPressed) {
  listThree();
  shown<QPushButton>("fill-bed")->setFocus();
  QSignalSpy ended(&panel.filling(), &Filling::ended);
  QTest::keyClick(shown<QPushButton>("fill-bed"), Qt::Key_Space);
  EXPECT_EQ(panel.focusWidget()->objectName(), QStringLiteral("fill-stop"));
  ASSERT_TRUE(ended.wait(30000));
  EXPECT_EQ(panel.focusWidget()->objectName(), QStringLiteral("fill-bed"));
}

TEST_F(FillPanelTest, WhatIsNoSpeciesIsSaidAndChangesNothing) {
  list("Rosa mundi");
  EXPECT_TRUE(shown<QLabel>("plant-list-said")->text().contains(QStringLiteral("Rosa mundi")));
  EXPECT_TRUE(onDisk().beds.find(bed)->plantList.empty());
}

TEST_F(FillPanelTest, AShareIsKeptAndSharesOverTheWholeAreSaid) {
  list("Echinacea purpurea");
  auto* share = shown<QLineEdit>("plant-list-share");
  QTest::keyClicks(share, QStringLiteral("120"));
  QTest::keyClick(share, Qt::Key_Return);
  EXPECT_EQ(onDisk().beds.find(bed)->plantList[0].share, 0.0) << "no share is above the whole";
  share->selectAll();
  QTest::keyClicks(share, QStringLiteral("40"));
  QTest::keyClick(share, Qt::Key_Return);
  EXPECT_NEAR(onDisk().beds.find(bed)->plantList[0].share, 0.4, 1e-12);
}

TEST_F(FillPanelTest, AMatrixPlantIsMarkedAndTakenBack) {
  list("Echinacea purpurea");
  click("plant-list-matrix");
  EXPECT_TRUE(onDisk().beds.find(bed)->plantList[0].matrix);
  EXPECT_TRUE(shown<QPushButton>("plant-list-matrix")->isChecked());
  click("plant-list-matrix");
  EXPECT_FALSE(onDisk().beds.find(bed)->plantList[0].matrix);
}

TEST_F(FillPanelTest, TakingASpeciesOffTheListIsOneEdit) {
  listThree();
  click("plant-list-remove");
  EXPECT_EQ(onDisk().beds.find(bed)->plantList.size(), 2u);
  document.undo();
  EXPECT_EQ(onDisk().beds.find(bed)->plantList.size(), 3u);
}

// Odd counts in groups to about nine and more: see docs/methods-planting.md for the sources.
TEST_F(FillPanelTest, FillingPlantsOddDriftsOfTheListedSpecies) {
  listThree();
  fillWith("fill-bed");
  const Yard yard = onDisk();
  ASSERT_GT(yard.drifts.size(), 2u);
  for (const Drift& drift : yard.drifts) {
    EXPECT_EQ(drift.plants.size() % 2, 1u) << drift.species;
    EXPECT_NE(drift.species, "Adiantum pedatum");
  }
  document.undo();
  EXPECT_EQ(onDisk().drifts.size(), 0u) << "one edit";
}

TEST_F(FillPanelTest, StoppingLeavesTheBedAsItWas) {
  listThree();
  click("fill-bed");
  QSignalSpy ended(&panel.filling(), &Filling::ended);
  click("fill-stop");
  EXPECT_EQ(ended.count(), 1);
  EXPECT_FALSE(panel.filling().running());
  QTest::qWait(50);
  EXPECT_EQ(onDisk().drifts.size(), 0u);
  EXPECT_TRUE(shown<QPushButton>("fill-bed")->isVisible());
}

TEST_F(FillPanelTest, ProgressAndTheBestSoFarShowWhileItWorks) {
  listThree();
  std::size_t mostShown = 0;
  double share = 0.0;
  QObject::connect(&panel.filling(), &Filling::bestChanged, &panel, [&](const ChangeSet& preview) {
    if (preview.empty()) return;
    mostShown = std::max(mostShown, preview.changes.size());
    EXPECT_EQ(document.yard().drifts.size(), 0u) << "a preview is no edit";
  });
  QObject::connect(&panel.filling(), &Filling::progressed, &panel,
                   [&](double told) { share = std::max(share, told); });
  fillWith("fill-bed");
  EXPECT_GT(mostShown, 2u);
  EXPECT_GT(share, 0.0);
  EXPECT_GT(onDisk().drifts.size(), 2u);
}

TEST_F(FillPanelTest, AnEditMeanwhileStopsTheFilling) {
  listThree();
  click("fill-bed");
  ASSERT_TRUE(document.commit(renamed("Another name")));
  EXPECT_FALSE(panel.filling().running());
  EXPECT_EQ(onDisk().drifts.size(), 0u);
}

TEST_F(FillPanelTest, LockedDriftsStayWhereTheyAre) {
  listThree();
  const Id<Drift> kept = plant("Echinacea purpurea", 5, {4, 2});
  Drift locked = *document.yard().drifts.find(kept);
  locked.locked = true;
  ASSERT_TRUE(document.commit(put(locked, "Lock drift")));
  fillWith("fill-bed");
  const Yard yard = onDisk();
  ASSERT_NE(yard.drifts.find(kept), nullptr);
  EXPECT_EQ(*yard.drifts.find(kept), locked);
  EXPECT_GT(yard.drifts.size(), 1u);
}

TEST_F(FillPanelTest, KeptArrangementsComeBackPlantForPlant) {
  listThree();
  fillWith("fill-bed");
  const auto first = placesOnDisk();
  click("arrangement-keep");
  ASSERT_EQ(onDisk().arrangements.size(), 1u);
  fillWith("fill-another");
  EXPECT_NE(placesOnDisk(), first);
  QTest::mouseClick(shown<ArrangementPicture>("arrangement-picture"), Qt::LeftButton);
  EXPECT_EQ(placesOnDisk(), first);
}

TEST_F(FillPanelTest, AnotherArrangementOfAProposedListHasTheSamePlants) {
  ASSERT_TRUE(onDisk().beds.find(bed)->plantList.empty());
  fillWith("fill-bed");
  const auto first = placesOnDisk();
  const std::set<std::string> species = speciesOnDisk();
  ASSERT_GT(species.size(), 1u);
  fillWith("fill-another");
  EXPECT_NE(placesOnDisk(), first);
  EXPECT_EQ(speciesOnDisk(), species);
}

// As after opening it again: nothing is known of what was proposed, and the plants stand there.
TEST_F(FillPanelTest, AnotherArrangementOfWhatStandsInTheBedHasTheSamePlants) {
  listThree();
  list("Monarda fistulosa");
  fillWith("fill-bed");
  Bed bare = *document.yard().beds.find(bed);
  bare.plantList.clear();
  ASSERT_TRUE(document.commit(put(bare, "Clear the list")));
  const auto species = speciesOnDisk();
  const auto first = placesOnDisk();
  fillWith("fill-another");
  EXPECT_NE(placesOnDisk(), first);
  EXPECT_EQ(speciesOnDisk(), species);
}

// A drift is taken out of a full bed; what stays is not touched, and the hole is planted.
TEST_F(FillPanelTest, TheGapsAreFilledAndNothingElseMoves) {
  listThree();
  fillWith("fill-bed");
  const Yard full = onDisk();
  ASSERT_GT(full.drifts.size(), 2u);
  const Drift gone = *std::max_element(
      full.drifts.begin(), full.drifts.end(),
      [](const Drift& a, const Drift& b) { return a.plants.size() < b.plants.size(); });
  Draft draft(document.yard());
  draft.remove(gone.id);
  ASSERT_TRUE(document.commit(draft.finish("Take a drift out")));
  fillWith("fill-gaps");
  const Yard after = onDisk();
  for (const Drift& drift : full.drifts) {
    if (drift.id == gone.id) continue;
    ASSERT_NE(after.drifts.find(drift.id), nullptr);
    EXPECT_EQ(positionsOf(*after.drifts.find(drift.id)), positionsOf(drift));
  }
  std::size_t plants = 0;
  for (const Drift& drift : after.drifts)
    if (full.drifts.find(drift.id) == nullptr) plants += drift.plants.size();
  EXPECT_GE(plants, 1u);
  EXPECT_LE(plants, gone.plants.size() + 4);
}

TEST_F(FillPanelTest, OneSpeciesIsRefilledAndTheOthersStay) {
  listThree();
  fillWith("fill-bed");
  const Yard before = onDisk();
  QMenu* menu = shown<QPushButton>("fill-species")->menu();
  menu->popup(panel.mapToGlobal(QPoint(10, 10)));
  ASSERT_EQ(menu->actions().size(), 2) << "the bluestem asks for dry ground: it is not in the bed";
  ASSERT_EQ(menu->actions().front()->text(), QStringLiteral("coneflower"));
  std::size_t mostShown = 0;
  QObject::connect(&panel.filling(), &Filling::bestChanged, &panel, [&](const ChangeSet& preview) {
    for (const Change& change : preview.changes)
      if (const auto* drift = change.before ? std::get_if<Drift>(&*change.before) : nullptr) {
        EXPECT_EQ(drift->species, "Echinacea purpurea") << "no other goes, even for a look";
        ++mostShown;
      }
  });
  QSignalSpy ended(&panel.filling(), &Filling::ended);
  QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(menu->actions()[0]).center());
  ASSERT_TRUE(ended.wait(30000));
  EXPECT_GT(mostShown, 0u);
  const Yard after = onDisk();
  int anew = 0;
  for (const Drift& drift : before.drifts) {
    const Drift* now = after.drifts.find(drift.id);
    if (drift.species == "Echinacea purpurea")
      anew += now == nullptr ? 1 : 0;
    else
      EXPECT_TRUE(now && *now == drift) << drift.species;
  }
  EXPECT_GT(anew, 0);
  EXPECT_TRUE(std::any_of(after.drifts.begin(), after.drifts.end(), [](const Drift& drift) {
    return drift.species == "Echinacea purpurea";
  }));
}

TEST_F(FillPanelTest, TheScoreIsShownRuleByRule) {
  listThree();
  fillWith("fill-bed");
  document.waitForAnalysis();
  click("fill-score-head");
  const auto* view = shown<QWidget>("fill-score");
  ASSERT_NE(view, nullptr);
  EXPECT_GT(view->height(), 60);
  EXPECT_TRUE(shown<QPushButton>("fill-score-head")->text().contains(QLatin1Char('%')));
}

// The figures and their sources are those of core/planting/published_figures.cpp.
TEST_F(FillPanelTest, TheScoreStandsBesidePublishedFigures) {
  listThree();
  fillWith("fill-bed");
  EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("fill-published"))->isVisible());
  click("fill-score-head");
  const QString words = shown<QLabel>("fill-published")->text();
  EXPECT_TRUE(words.contains(QStringLiteral("Plants a square yard, main layer")));
  EXPECT_TRUE(words.contains(QStringLiteral("the published 3.34 to 7.53")));
  EXPECT_TRUE(words.contains(QStringLiteral("the published 4 and more")));
  const auto figures = publishedFigures(document.yard(), document.facts(), bed);
  for (const PublishedFigure& figure : figures)
    EXPECT_TRUE(words.contains(QString::fromStdString(besidePublished(figure))))
        << besidePublished(figure);
}

TEST_F(FillPanelTest, TheWheelScrollsAndChangesNothing) {
  auto* slider = shown<QSlider>("bed-wildness");
  QWheelEvent wheel(QPointF(5, 5), slider->mapToGlobal(QPointF(5, 5)), {}, {0, -120}, {}, {},
                    Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(slider, &wheel);
  EXPECT_EQ(slider->value(), 50);
  EXPECT_EQ(onDisk().beds.find(bed)->wildness, 0.5);
}

TEST_F(FillPanelTest, FormalToNaturalIsKept) {
  auto* slider = shown<QSlider>("bed-wildness");
  slider->setFocus();
  QTest::keyClick(slider, Qt::Key_End);
  EXPECT_EQ(onDisk().beds.find(bed)->wildness, 1.0);
}

}  // namespace
}  // namespace tussock
