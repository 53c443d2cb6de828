// SPDX-License-Identifier: MIT
// The bed's plant list across the bench: what is changed in the list shows beside it at once, and
// is in the file.
#include "app/panels/list_desk.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "app/panels/plant_list_edit.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class ListDeskTest : public test::OpenYard {
 protected:
  ListDeskTest() : panel(document) {
    panel.resize(1200, 320);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    document.select({refTo(bed)});
    panel.showList(true);
  }
  template <class W>
  W* part(const char* name) const {
    QCoreApplication::processEvents();
    for (W* found : panel.findChildren<W*>(QLatin1String(name)))
      if (found->isVisible()) return found;
    return nullptr;
  }
  void add(const char* name) const {
    auto* line = part<QLineEdit>("plant-list-add");
    ASSERT_TRUE(line);
    QTest::keyClicks(line, QLatin1String(name));
    QTest::keyClick(line, Qt::Key_Return);
  }

  BenchPanel panel;
};

TEST_F(ListDeskTest, StandsInPlaceOfTheCardsUntilSentBack) {
  EXPECT_FALSE(panel.cards()->isVisible());
  EXPECT_EQ(part<QLabel>("list-desk-title")->text(), QStringLiteral("Plant list of Walk"));
  QTest::mouseClick(part<QPushButton>("list-desk-back"), Qt::LeftButton);
  EXPECT_TRUE(panel.cards()->isVisible());
  EXPECT_EQ(part<QLabel>("list-desk-title"), nullptr);
}

TEST_F(ListDeskTest, ACommonNameBringsUpThePlantAndAClickAddsIt) {
  auto* line = part<QLineEdit>("plant-list-add");
  ASSERT_TRUE(line);
  line->setFocus();
  QTest::keyClicks(line, QStringLiteral("coneflower"));
  QAbstractItemView* offered = line->completer()->popup();
  ASSERT_TRUE(offered->isVisible());
  const QModelIndex first = offered->model()->index(0, 0);
  EXPECT_TRUE(first.data().toString().startsWith(QStringLiteral("Echinacea purpurea, ")));
  QTest::mouseClick(offered->viewport(), Qt::LeftButton, {}, offered->visualRect(first).center());
  QCoreApplication::processEvents();
  const auto list = onDisk().beds.find(bed)->plantList;
  ASSERT_EQ(list.size(), 1u);
  EXPECT_EQ(list.front().species, "Echinacea purpurea");
  EXPECT_TRUE(line->text().isEmpty());
}

QStringList offeredBy(const QAbstractItemView& popup) {
  QStringList lines;
  for (int row = 0; row < popup.model()->rowCount(); ++row)
    lines << popup.model()->index(row, 0).data().toString();
  return lines;
}

// What the search of the plants finds, in its order, however the words are put.
TEST_F(ListDeskTest, OffersWhatTheSearchFinds) {
  auto* line = part<QLineEdit>("plant-list-add");
  ASSERT_TRUE(line);
  line->setFocus();
  for (const char* typed : {"coneflower purp", "purpurea coneflower", "aster", "e"}) {
    line->selectAll();
    QTest::keyClicks(line, QLatin1String(typed));
    const QStringList offered = offeredBy(*line->completer()->popup());
    const auto found = document.facts().search(typed);
    ASSERT_FALSE(found.empty()) << typed;
    ASSERT_EQ(std::size_t(offered.size()), found.size()) << typed;
    for (std::size_t i = 0; i < found.size(); ++i)
      EXPECT_TRUE(offered[int(i)].startsWith(QString::fromStdString(found[i]->botanicalName)));
    EXPECT_TRUE(line->completer()->popup()->isVisible()) << typed;
  }
}

// What is only part of a name is offered and not taken.
TEST_F(ListDeskTest, WhatIsNoNameIsLeftToBeChosenFromWhatIsOffered) {
  add("cone");
  auto* line = part<QLineEdit>("plant-list-add");
  EXPECT_TRUE(onDisk().beds.find(bed)->plantList.empty());
  EXPECT_TRUE(part<QLabel>("plant-list-said")->text().contains(QStringLiteral("names offered")));
  EXPECT_TRUE(QTest::qWaitFor([&] { return line->completer()->popup()->isVisible(); }));
  EXPECT_EQ(offeredBy(*line->completer()->popup()).size(), 1);
}

TEST_F(ListDeskTest, TheFieldThatAddsStandsAboveTheList) {
  add("coneflower");
  const auto yOf = [&](const QWidget* widget) { return widget->mapTo(&panel, QPoint()).y(); };
  EXPECT_LT(yOf(part<QLineEdit>("plant-list-add")), yOf(part<QLabel>("plant-list-name")));
}

TEST_F(ListDeskTest, FiguresFollowTheListBesideIt) {
  EXPECT_EQ(part<QLabel>("figures-diversity"), nullptr) << "nothing listed yet";
  add("coneflower");
  add("Schizachyrium scoparium");
  ASSERT_EQ(onDisk().beds.find(bed)->plantList.size(), 2u);
  auto* variety = part<QLabel>("figures-diversity");
  ASSERT_TRUE(variety);
  EXPECT_TRUE(variety->text().contains(QStringLiteral("2 species"))) << qPrintable(variety->text());
  const QPoint list = part<QLineEdit>("plant-list-add")->mapTo(&panel, QPoint());
  EXPECT_GT(variety->mapTo(&panel, QPoint()).x(), list.x() + 200) << "beside, not under it";
  auto* share = part<QLineEdit>("plant-list-share");
  share->setFocus();
  QTest::keyClicks(share, QStringLiteral("90 %"));
  QTest::keyClick(share, Qt::Key_Return);
  EXPECT_NEAR(onDisk().beds.find(bed)->plantList.front().share, 0.9, 1e-12);
  EXPECT_TRUE(part<QLabel>("figures-genera")->text().contains(QStringLiteral("90")))
      << qPrintable(part<QLabel>("figures-genera")->text());
}

TEST_F(ListDeskTest, WithoutABedItSaysWhatToDo) {
  document.select({});
  auto* words = part<QLabel>("list-desk-empty");
  ASSERT_TRUE(words);
  EXPECT_TRUE(words->text().startsWith(QStringLiteral("Select a bed")));
}

TEST_F(ListDeskTest, AskingAboutAPointBringsTheCardsBack) {
  panel.askAt({1.0, 1.0});
  EXPECT_TRUE(panel.cards()->isVisible());
}

TEST_F(ListDeskTest, LongNamesAreShownWhole) {
  for (const char* name : {"Symphyotrichum oolentangiense", "Symphyotrichum novae-angliae",
                           "Osmundastrum cinnamomeum", "Zizia aurea"})
    addToPlantList(document, bed, name);
  QCoreApplication::processEvents();
  std::size_t seen = 0;
  for (const auto* name : panel.findChildren<QLabel*>(QStringLiteral("plant-list-name"))) {
    if (!name->isVisible()) continue;
    ++seen;
    const QSize least = name->wordWrap() ? QSize(name->minimumSizeHint().width(),
                                                 name->heightForWidth(name->width()))
                                         : name->sizeHint();
    EXPECT_GE(name->width(), least.width()) << qPrintable(name->text());
    EXPECT_GE(name->height(), least.height()) << qPrintable(name->text());
  }
  EXPECT_EQ(seen, 4u);
}

}  // namespace
}  // namespace tussock
