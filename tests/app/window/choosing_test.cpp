// SPDX-License-Identifier: MIT
// Asking of a place in the real window what suits it.
#include <QLabel>
#include <QPushButton>

#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "core/catalog/bed_request.h"
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

}  // namespace
}  // namespace tussock
