// SPDX-License-Identifier: MIT
#include "app/panels/year_panel.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "app/panels/year_ruler.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class YearTest : public test::OpenYard {
 protected:
  YearTest() : panel(document) {
    panel.resize(1200, 40);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }
  QPoint at(int week) const { return {int(panel.ruler()->xOfWeek(week + 0.5)), 12}; }

  YearPanel panel;
};

TEST_F(YearTest, DraggingTheHandleTellsEachWeek) {
  std::vector<std::optional<int>> weeks;
  QObject::connect(&panel, &YearPanel::weekChanged, &panel,
                   [&](std::optional<int> week) { weeks.push_back(week); });
  QTest::mousePress(panel.ruler(), Qt::LeftButton, {}, at(20));
  QTest::mouseMove(panel.ruler(), at(21));
  QTest::mouseMove(panel.ruler(), at(30));
  QTest::mouseRelease(panel.ruler(), Qt::LeftButton, {}, at(30));
  EXPECT_EQ(weeks, (std::vector<std::optional<int>>{20, 21, 30}));
  EXPECT_EQ(panel.week(), 30);
}

TEST_F(YearTest, BothEndsOfTheYearCanBeReached) {
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, QPoint(2, 12));
  EXPECT_EQ(panel.week(), 0);
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, QPoint(panel.ruler()->width() - 2, 12));
  EXPECT_EQ(panel.week(), kWeeksInYear - 1);
}

TEST_F(YearTest, ArrowKeysStepAndEscapeShowsAllInFlower) {
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, at(30));
  QTest::keyClick(panel.ruler(), Qt::Key_Right);
  QTest::keyClick(panel.ruler(), Qt::Key_Right);
  EXPECT_EQ(panel.week(), 32);
  QSignalSpy changed(&panel, &YearPanel::weekChanged);
  QTest::keyClick(panel.ruler(), Qt::Key_Escape);
  EXPECT_EQ(panel.week(), std::nullopt);
  EXPECT_EQ(changed.count(), 1);
}

TEST_F(YearTest, UnfoldsForTheYearsAndFoldsAgain) {
  EXPECT_TRUE(panel.isFolded());
  auto* second = panel.findChild<QPushButton*>(QStringLiteral("year-2"));
  EXPECT_FALSE(second->isVisible());
  const int thin = panel.sizeHint().height();
  auto* fold = panel.findChild<QToolButton*>(QStringLiteral("year-fold"));
  QTest::mouseClick(fold, Qt::LeftButton);
  EXPECT_TRUE(second->isVisible());
  EXPECT_GT(panel.sizeHint().height(), thin);
  std::vector<GrowthYear> years;
  QObject::connect(&panel, &YearPanel::yearChanged, &panel,
                   [&](GrowthYear year) { years.push_back(year); });
  QTest::mouseClick(second, Qt::LeftButton);
  EXPECT_EQ(years, std::vector{GrowthYear::Second});
  EXPECT_EQ(panel.year(), GrowthYear::Second);
  QTest::mouseClick(fold, Qt::LeftButton);
  EXPECT_TRUE(panel.isFolded());
  EXPECT_EQ(panel.year(), GrowthYear::Second);
}

TEST_F(YearTest, TheWayBackFromOneWeekIsShown) {
  panel.unfold();
  auto* all = panel.findChild<QPushButton*>(QStringLiteral("year-any-week"));
  EXPECT_FALSE(all->isVisible());
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, at(30));
  ASSERT_TRUE(all->isVisible());
  QTest::mouseClick(all, Qt::LeftButton);
  EXPECT_EQ(panel.week(), std::nullopt);
}

// A southern year runs from July to June, so that its growing season lies in one piece between two
// winters, as a northern one's does (half a year: common practice).
TEST_F(YearTest, ASouthernYearRunsFromItsOwnWinter) {
  const MonthDay lastFrost = std::chrono::October / 5, firstFrost = std::chrono::April / 25;
  moveSouth(lastFrost, firstFrost);
  const YearRuler& ruler = *panel.ruler();
  const auto x = [&](MonthDay day) { return ruler.xOfWeek(weekOf(day)); };
  EXPECT_LT(x(lastFrost), x(std::chrono::December / 31));
  EXPECT_LT(x(std::chrono::December / 31), x(std::chrono::January / 8));
  EXPECT_LT(x(std::chrono::January / 8), x(firstFrost));
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, at(weekOf(std::chrono::January / 20)));
  EXPECT_EQ(panel.week(), weekOf(std::chrono::January / 20));
  QTest::keyClick(panel.ruler(), Qt::Key_Home);
  EXPECT_EQ(panel.week(), weekOf(std::chrono::July / 2));
  QTest::keyClick(panel.ruler(), Qt::Key_End);
  EXPECT_EQ(panel.week(), weekOf(std::chrono::June / 30));
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, at(kWeeksInYear - 1));
  QTest::keyClick(panel.ruler(), Qt::Key_Right);
  EXPECT_EQ(panel.week(), 0) << "over New Year, in the middle of the ruler";
}

// July to September in the table, so January to March there: one band in one piece, seen on paper.
TEST_F(YearTest, ASouthernBandIsDrawnWhereItsWeeksStand) {
  const Id<Drift> planted = plant("Echinacea purpurea", 3, {4, 2});
  ASSERT_TRUE(document.yard().drifts.find(planted));
  moveSouth();
  panel.unfold();
  panel.resize(1200, 100);
  const QImage seen = panel.ruler()->grab().toImage();
  const auto inked = [&](MonthDay day) {
    const int x = int(panel.ruler()->xOfWeek(weekOf(day) + 0.3) * seen.devicePixelRatio());
    for (int y = int(26 * seen.devicePixelRatio()); y < int(32 * seen.devicePixelRatio()); ++y)
      if (seen.pixelColor(x, y).hsvSaturationF() > 0.4) return true;
    return false;
  };
  EXPECT_TRUE(inked(std::chrono::February / 15));
  EXPECT_FALSE(inked(std::chrono::August / 15));
  EXPECT_FALSE(inked(std::chrono::November / 15));
}

TEST_F(YearTest, AScreenReaderHearsWhatIsInFlower) {
  plant("Echinacea purpurea", 3, {4, 2});
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, at(30));
  EXPECT_TRUE(
      panel.ruler()->accessibleDescription().contains(QStringLiteral("Echinacea purpurea")));
  QTest::mouseClick(panel.ruler(), Qt::LeftButton, {}, at(3));
  EXPECT_TRUE(panel.ruler()->accessibleDescription().contains(QStringLiteral("nothing in flower")));
}

}  // namespace
}  // namespace tussock
