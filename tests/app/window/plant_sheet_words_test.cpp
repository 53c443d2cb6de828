// SPDX-License-Identifier: MIT
// What the fields of a plant say of where a value is from, and of one that cannot be taken.
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class PlantSheetWords : public test::WindowTest {
 protected:
  PlantSheetWords() {
    test::YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))")
        .drift("Monarda fistulosa", test::row(3, 0.5, {1.0, 1.5}));
    start(builder.build());
    document.select({refTo(builder.lastDrift())});
    QCoreApplication::processEvents();
    QTest::mouseClick(window->findChild<QPushButton*>(QStringLiteral("drift-facts")),
                      Qt::LeftButton);
  }
  template <class W>
  W* shown(const QString& name) const {
    QCoreApplication::processEvents();
    for (W* found : window->findChildren<W*>(name))
      if (found->isVisible()) return found;
    ADD_FAILURE() << "no " << qPrintable(name) << " shown";
    return nullptr;
  }
  QLineEdit* field(const char* column) const {
    return shown<QLineEdit>(QStringLiteral("plant-") + QLatin1String(column));
  }
  QLabel* note(const char* column) const {
    return shown<QLabel>(QStringLiteral("plant-note-") + QLatin1String(column));
  }
  void type(const char* column, const QString& words) const {
    QLineEdit* line = field(column);
    ASSERT_TRUE(line);
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, words);
    QTest::keyClick(line, Qt::Key_Return);
  }
};

TEST_F(PlantSheetWords, OfAValueChosenWithinAToleranceItIsSaidSo) {
  EXPECT_TRUE(note("height_max_cm")->text().endsWith(QStringLiteral(", within a tolerance")))
      << qPrintable(note("height_max_cm")->text());
  EXPECT_FALSE(note("family")->text().contains(QStringLiteral("tolerance")));
  const QString tip = note("height_max_cm")->toolTip();
  EXPECT_TRUE(tip.contains(QStringLiteral("the range of heights meets"))) << qPrintable(tip);
}

TEST_F(PlantSheetWords, ANegativeSizeIsSaidToBeNegative) {
  type("spacing_cm", QStringLiteral("-5"));
  const auto* line = field("spacing_cm");
  bool said = false;
  for (const QLabel* label : window->findChildren<QLabel*>())
    said =
        said || (label->isVisible() && label->text().contains(QStringLiteral("not be negative")));
  EXPECT_TRUE(said);
  EXPECT_EQ(line->text(), QStringLiteral("-5")) << "to be mended";
}

// Over the New Year flowers last half a year at most: from June to March is refused.
TEST_F(PlantSheetWords, ARefusalIsInTheWordsOfTheFieldsAndUndoTakesItAway) {
  type("bloom_end_month", QStringLiteral("may"));
  auto* line = field("bloom_end_month");
  ASSERT_TRUE(line);
  auto* wrong = shown<QLabel>(QStringLiteral("plant-bloom_end_month-wrong"));
  ASSERT_TRUE(wrong);
  EXPECT_TRUE(wrong->text().contains(QStringLiteral("(June)"))) << qPrintable(wrong->text());
  QTest::keyClick(line, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_FALSE(wrong->isVisible());
  EXPECT_EQ(line->text(), QStringLiteral("August"));
}

TEST_F(PlantSheetWords, UndoingAnEditElsewhereTakesARefusalAway) {
  type("bloom_start_month", QStringLiteral("may"));
  type("bloom_end_month", QStringLiteral("april"));
  auto* wrong = shown<QLabel>(QStringLiteral("plant-bloom_end_month-wrong"));
  ASSERT_TRUE(wrong);
  trigger("actionUndo");
  EXPECT_FALSE(wrong->isVisible());
  EXPECT_EQ(field("bloom_end_month")->text(), QStringLiteral("August"));
}

}  // namespace
}  // namespace tussock
