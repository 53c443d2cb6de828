// SPDX-License-Identifier: MIT
// Two arrangements side by side across the bench: what is chosen shows, and planting one is in the
// file.
#include "app/panels/compare_desk.h"

#include <QApplication>
#include <QComboBox>
#include <QHelpEvent>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QToolTip>

#include "app/panels/arrangement_picture.h"
#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "core/planting/arrangements.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class CompareDeskTest : public test::OpenYard {
 protected:
  CompareDeskTest() : panel(document) {
    plant("Echinacea purpurea", 5, {2, 2});
    plant("Symphyotrichum laeve", 3, {5, 2});
    EXPECT_TRUE(document.commit(
        keepArrangement(document.yard(), bed, "Five and three", 1, 0.5, document.ids())));
    plant("Schizachyrium scoparium", 7, {7, 2});
    panel.resize(1300, 320);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    document.select({refTo(bed)});
    panel.showArrangements();
    QCoreApplication::processEvents();
  }
  template <class W>
  W* part(const char* name) const {
    return panel.findChild<W*>(QLatin1String(name));
  }
  [[nodiscard]] QString facts(const char* side) const { return part<QLabel>(side)->text(); }

  BenchPanel panel;
};

TEST_F(CompareDeskTest, ShowsTheGroundBesideWhatWasKeptLast) {
  EXPECT_FALSE(panel.cards()->isVisible());
  EXPECT_EQ(part<QComboBox>("compare-left")->currentText(), QStringLiteral("On the ground"));
  EXPECT_EQ(part<QComboBox>("compare-right")->currentText(), QStringLiteral("Five and three"));
  EXPECT_TRUE(facts("compare-facts-left").startsWith(QStringLiteral("15 plants · 3 drifts")));
  EXPECT_TRUE(facts("compare-facts-right").startsWith(QStringLiteral("8 plants · 2 drifts")));
  int pictures = 0;
  for (const auto* picture : panel.findChildren<ArrangementPicture*>())
    if (picture->isVisible()) {
      ++pictures;
      EXPECT_GT(picture->width(), 300);
      EXPECT_GT(picture->height(), 120);
    }
  EXPECT_EQ(pictures, 2);
}

TEST_F(CompareDeskTest, TheOtherIsPlantedWithOnePress) {
  EXPECT_FALSE(part<QPushButton>("compare-plant-left")->isEnabled()) << "it stands there";
  QTest::mouseClick(part<QPushButton>("compare-plant-right"), Qt::LeftButton);
  EXPECT_EQ(onDisk().drifts.size(), 2u);
  EXPECT_TRUE(facts("compare-facts-left").startsWith(QStringLiteral("8 plants")));
  document.undo();
  EXPECT_EQ(onDisk().drifts.size(), 3u) << "one edit";
}

TEST_F(CompareDeskTest, OpensOnTwoThatDiffer) {
  ASSERT_TRUE(
      document.commit(keepArrangement(document.yard(), bed, "All three", 1, 0.5, document.ids())));
  QTest::mouseClick(part<QPushButton>("compare-back"), Qt::LeftButton);
  panel.showArrangements();
  QCoreApplication::processEvents();
  EXPECT_EQ(part<QComboBox>("compare-left")->currentText(), QStringLiteral("On the ground"));
  EXPECT_EQ(part<QComboBox>("compare-right")->currentText(), QStringLiteral("Five and three"))
      << "what was kept last stands on the ground";
  EXPECT_FALSE(part<QLabel>("compare-same")->isVisible());
}

TEST_F(CompareDeskTest, ASideMayBeChosen) {
  auto* left = part<QComboBox>("compare-left");
  left->setFocus();
  QTest::keyClick(left, Qt::Key_Down);
  EXPECT_EQ(left->currentText(), QStringLiteral("Five and three"));
  EXPECT_TRUE(facts("compare-facts-left").startsWith(QStringLiteral("8 plants")));
  EXPECT_TRUE(part<QLabel>("compare-same")->isVisible()) << "both are the same now";
}

// The tip under the pointer, in the middle of a drift of the picture on the left.
TEST_F(CompareDeskTest, TellsTheSpeciesUnderThePointer) {
  ArrangementPicture* ground = nullptr;
  for (auto* picture : panel.findChildren<ArrangementPicture*>())
    if (picture->isVisible() &&
        (!ground || picture->mapTo(&panel, QPoint()).x() < ground->mapTo(&panel, QPoint()).x()))
      ground = picture;
  ASSERT_NE(ground, nullptr);
  QStringList told;
  for (int x = 0; x < ground->width(); x += 3)
    for (int y = 0; y < ground->height(); y += 3) {
      QToolTip::hideText();
      QHelpEvent asked(QEvent::ToolTip, QPoint(x, y), ground->mapToGlobal(QPoint(x, y)));
      QApplication::sendEvent(ground, &asked);
      if (const QString words = ground->wordsAt(QPointF(x, y)); !words.isEmpty()) {
        EXPECT_EQ(QToolTip::text(), words);
        told << words;
      }
    }
  told.removeDuplicates();
  ASSERT_EQ(told.size(), 3) << told.join('|').toStdString();
  const QString all = told.join(QLatin1Char('|'));
  for (const char* words : {"coneflower: 5", "smooth aster: 3", "little bluestem: 7"})
    EXPECT_TRUE(all.contains(QLatin1String(words))) << all.toStdString();
}

// Kept at the middle of the slider, which has been moved since.
TEST_F(CompareDeskTest, SaysWhereOnTheSliderEachIsScored) {
  EXPECT_TRUE(facts("compare-facts-left").contains(QStringLiteral("at 50 % natural")));
  EXPECT_FALSE(part<QLabel>("compare-manner")->isVisible());
  const QString kept = facts("compare-facts-right"), before = facts("compare-facts-left");
  Bed wilder = *document.yard().beds.find(bed);
  wilder.wildness = 1.0;
  Draft draft(document.yard());
  draft.put(wilder);
  ASSERT_TRUE(document.commit(draft.finish("Change manner of planting")));
  EXPECT_EQ(facts("compare-facts-right"), kept) << "its own";
  EXPECT_TRUE(facts("compare-facts-left").contains(QStringLiteral("at 100 % natural")));
  EXPECT_NE(facts("compare-facts-left"), before);
  ASSERT_TRUE(part<QLabel>("compare-manner")->isVisible());
  EXPECT_TRUE(part<QLabel>("compare-manner")
                  ->text()
                  .startsWith(QStringLiteral("Scored at 100 % natural on the left, 50 % natural")));
}

TEST_F(CompareDeskTest, BringsTheCardsBack) {
  QTest::mouseClick(part<QPushButton>("compare-back"), Qt::LeftButton);
  EXPECT_TRUE(panel.cards()->isVisible());
}

}  // namespace
}  // namespace tussock
