// SPDX-License-Identifier: MIT
// Asking of a place in the real window what suits it, and reading of plants there.
#include <algorithm>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/panels/bench_panel.h"
#include "app/panels/bloom_chart.h"
#include "app/panels/card_strip.h"
#include "app/panels/plant_columns.h"
#include "app/panels/species_marks.h"
#include "core/catalog/bed_request.h"
#include "core/edit/draft.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

constexpr auto kBed = "POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))";

class ChoosingTest : public test::WindowTest {
 protected:
  ChoosingTest() { start(test::YardBuilder().bed("Walk", kBed).moisture(Moisture::Dry).build()); }
  [[nodiscard]] BenchPanel& bench() const { return *window->findChild<BenchPanel*>(); }
  [[nodiscard]] QString count() const {
    return bench().findChild<QLabel*>(QStringLiteral("bench-count"))->text();
  }
};

TEST_F(ChoosingTest, BulbsAreChosenAsAnyOtherForm) {
  auto* bulbs = bench().findChild<QPushButton*>(QStringLiteral("chip-bulb"));
  ASSERT_TRUE(bulbs);
  QTest::mouseClick(bulbs, Qt::LeftButton);
  const auto chosen = bench().cards()->species();
  const auto& all = document.facts().species();
  EXPECT_GT(chosen.size(), 0u);
  EXPECT_EQ(std::ptrdiff_t(chosen.size()),
            std::count_if(all.begin(), all.end(),
                          [](const Species& one) { return one.habit == Habit::Bulb; }));
}

TEST_F(ChoosingTest, QAsksOfThePlaceUnderThePointer) {
  document.waitForAnalysis();
  moveTo({2.0, 1.5});
  key(Qt::Key_Q);
  EXPECT_TRUE(count().contains(QStringLiteral("fit this point"))) << qPrintable(count());
  const auto sun = document.sunMap()->hoursAt({2.0, 1.5});
  const RankRequest request = requestAt(yard(), document.facts(), {2.0, 1.5},
                                        sun ? std::optional(sun->total()) : std::nullopt);
  const auto best = rankFor(document.facts(), request).front();
  EXPECT_EQ(bench().cards()->species().front(), best.species);
  for (const Species* one : bench().cards()->species())
    EXPECT_TRUE(rankOf(*one, request).suits()) << one->botanicalName;
}

TEST_F(ChoosingTest, SelectingSomethingElseEndsAskingOfThePoint) {
  document.waitForAnalysis();
  moveTo({2.0, 1.5});
  key(Qt::Key_Q);
  document.select({refTo(yard().beds.begin()->id)});
  EXPECT_TRUE(count().contains(QStringLiteral("fit this bed"))) << qPrintable(count());
}

TEST_F(ChoosingTest, TheBestOfThePlaceIsPlantedByDraggingItsCard) {
  document.waitForAnalysis();
  moveTo({2.0, 1.5});
  key(Qt::Key_Q);
  const std::string best = bench().cards()->species().front()->botanicalName;
  QWidget* cards = bench().cards()->viewport();
  const QPoint from = bench().cards()->cardRect(0).center();
  const QPoint to = cards->mapFromGlobal(canvas().mapToGlobal(pixels({2.0, 1.5})));
  QTest::mousePress(cards, Qt::LeftButton, {}, from);
  QTest::mouseMove(cards, from - QPoint(0, 40));
  QTest::mouseMove(cards, to);
  QTest::mouseRelease(cards, Qt::LeftButton, {}, to);
  const Yard kept = inFile();
  ASSERT_EQ(kept.drifts.size(), 1u);
  EXPECT_EQ(kept.drifts.begin()->species, best);
}

class ReadingTest : public ChoosingTest {
 protected:
  static constexpr const char* kBergamot = "Monarda fistulosa";

  ReadingTest() { window->resize(1280, 800); }
  // The bed with a drift of bergamot, selected.
  void plantBergamot(double latitude) {
    Draft draft(yard());
    Settings settings = yard().settings;
    settings.latitude = Angle::degrees(latitude);
    settings.lastFrost.reset(), settings.firstFrost.reset();
    draft.put(settings);
    Drift drift;
    drift.id = document.ids().take<Drift>();
    drift.bed = yard().beds.begin()->id;
    drift.species = kBergamot;
    drift.spacing = Length::metres(0.5);
    for (const Point at : test::row(3, 0.5, {1.0, 1.5}))
      drift.plants.push_back({document.ids().take<Plant>(), at});
    draft.put(drift);
    ASSERT_TRUE(document.commit(draft.finish("Plant")));
    document.select({refTo(drift.id)});
  }
  [[nodiscard]] QString plantShown() const {
    QCoreApplication::processEvents();
    const auto* name = window->findChild<QLabel*>(QStringLiteral("plant-botanical"));
    return name->isVisible() ? name->text() : QString();
  }
  [[nodiscard]] QLineEdit* field(const char* column) const {
    for (auto* line :
         window->findChildren<QLineEdit*>(QStringLiteral("plant-") + QLatin1String(column)))
      if (line->isVisible()) return line;
    return nullptr;
  }
};

TEST_F(ReadingTest, TheCardPressedLastGoesBeforeTheDriftSelected) {
  plantBergamot(38.4);
  window->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  const Species& card = *bench().cards()->species().front();
  ASSERT_NE(card.botanicalName, kBergamot);
  QTest::mouseClick(bench().cards()->viewport(), Qt::LeftButton, {},
                    bench().cards()->cardRect(0).center());
  trigger("actionPlantFacts");
  EXPECT_TRUE(plantShown().contains(QString::fromStdString(card.genus)))
      << qPrintable(plantShown());
  canvas().setFocus();
  trigger("actionPlantFacts");
  EXPECT_TRUE(plantShown().contains(QStringLiteral("Monarda"))) << qPrintable(plantShown());
}

TEST_F(ReadingTest, AFairShareOfTheFactsShowsInASmallWindow) {
  plantBergamot(38.4);
  document.waitForAnalysis();
  trigger("actionPlantFacts");
  QCoreApplication::processEvents();
  int seen = 0;
  for (const PlantColumnGroup& group : plantColumnGroups())
    for (const PlantColumn& column : group.columns)
      if (const auto* part =
              window->findChild<QWidget*>(QStringLiteral("plant-") + text(column.column)))
        seen += part->visibleRegion().contains(part->rect().center());
  EXPECT_GE(seen, 6);
}

// A dozen and more species fit without a bar to scroll, and a week is wider than a hair.
TEST_F(ReadingTest, TheBloomOfALongListIsReadBesideItInASmallWindow) {
  Bed bed = *yard().beds.begin();
  for (const Species& one : document.facts().species()) {
    if (bed.plantList.size() == 16) break;
    if (showsFlowers(one)) bed.plantList.push_back({one.botanicalName, 0.0});
  }
  Draft draft(yard());
  draft.put(bed);
  ASSERT_TRUE(document.commit(draft.finish("List")));
  document.select({refTo(bed.id)});
  trigger("actionPlantList");
  const BloomChart* chart = nullptr;
  for (const auto* one : bench().findChildren<BloomChart*>())
    if (one->isVisible()) chart = one;
  ASSERT_TRUE(chart);
  const auto seenWhole = [&] {
    return chart->visibleRegion().boundingRect().height() == chart->height();
  };
  EXPECT_TRUE(QTest::qWaitFor(seenWhole))
      << chart->visibleRegion().boundingRect().height() << " of " << chart->height();
  int weeks = 0;
  QString last;
  for (int x = 0; x < chart->width(); ++x) {
    const QString words = chart->wordsAt({x, chart->height() - 4});
    weeks += !words.isEmpty() && words != last;
    last = words;
  }
  EXPECT_EQ(weeks, 52);
  EXPECT_GT(chart->width(), 450);
}

// In the table bergamot flowers from June to August.
TEST_F(ReadingTest, ASouthernYardShowsAndTakesItsOwnMonthsAndKeepsThoseOfTheTable) {
  plantBergamot(-38.4);
  trigger("actionPlantFacts");
  QLineEdit* from = field("bloom_start_month");
  ASSERT_TRUE(from);
  EXPECT_EQ(from->text(), QStringLiteral("December"));
  from->setFocus();
  from->selectAll();
  QTest::keyClicks(from, QStringLiteral("November"));
  QTest::keyClick(from, Qt::Key_Return);
  const Yard kept = inFile();
  ASSERT_EQ(kept.ownSpecies.size(), 1u);
  EXPECT_EQ(kept.ownSpecies.begin()->facts, (std::vector<OwnFact>{{"bloom_start_month", "5"}}));
  EXPECT_EQ(document.facts().find(kBergamot)->bloomMonths()->first, 11);
}

TEST_F(ReadingTest, AYardThatMovesOverTheEquatorHasItsWeeksMovedAtOnceAndBackByUndo) {
  plantBergamot(38.4);
  EXPECT_EQ(document.facts().find(kBergamot)->bloomMonths()->first, 6);
  Settings south = yard().settings;
  south.latitude = Angle::degrees(-38.4);
  Draft draft(yard());
  draft.put(south);
  ASSERT_TRUE(document.commit(draft.finish("Move")));
  EXPECT_EQ(document.facts().find(kBergamot)->bloomMonths()->first, 12);
  document.undo();
  EXPECT_EQ(document.facts().find(kBergamot)->bloomMonths()->first, 6);
}

}  // namespace
}  // namespace tussock
