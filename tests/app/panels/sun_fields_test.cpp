// SPDX-License-Identifier: MIT
// Fields that decide the shade, typed by hand.
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>

#include "app/panels/margin_panel.h"
#include "tests/app/open_yard.h"

namespace tussock {
namespace {

class SunFields : public test::OpenYard {
 protected:
  SunFields() : panel(document) {
    panel.resize(336, 1400);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    Settings metric = document.yard().settings;
    metric.units = UnitSystem::Metres;
    document.commit(put(metric, "Change units"));
  }
  template <class W>
  W* shown(const char* name) const {
    for (W* found : panel.findChildren<W*>(QLatin1String(name)))
      if (found->isVisibleTo(&panel)) return found;
    ADD_FAILURE() << "no " << name << " shown";
    return nullptr;
  }
  [[nodiscard]] bool complains(const char* name) const {
    for (QLabel* found : panel.findChildren<QLabel*>(QLatin1String(name)))
      if (found->isVisibleTo(&panel)) return true;
    return false;
  }
  void type(const char* field, const QString& text) const {
    auto* line = shown<QLineEdit>(field);
    line->selectAll();
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
  }
  [[nodiscard]] Settings settings() const { return onDisk().settings; }

  MarginPanel panel;
};

TEST_F(SunFields, ATreesGrowthAndFullHeight) {
  Tree tree;
  tree.id = document.ids().take<Tree>();
  document.commit(put(tree, "Plant tree"));
  document.select({refTo(tree.id)});
  type("tree-growth", QStringLiteral("0.4"));
  type("tree-mature-height", QStringLiteral("15 m"));
  EXPECT_DOUBLE_EQ(onDisk().trees.find(tree.id)->growth.metres(), 0.4);
  EXPECT_DOUBLE_EQ(onDisk().trees.find(tree.id)->matureHeight->metres(), 15.0);
  type("tree-mature-height", QString());
  EXPECT_FALSE(onDisk().trees.find(tree.id)->matureHeight);
  type("tree-growth", QStringLiteral("-1"));
  EXPECT_TRUE(complains("tree-growth-wrong"));
}

TEST_F(SunFields, ABuildingsUndersideStaysUnderItsEave) {
  Building roof;
  roof.id = document.ids().take<Building>();
  roof.footprint = rectangle({0, 6}, {8, 12});
  document.commit(put(roof, "Draw building"));
  document.select({refTo(roof.id)});
  type("building-base", QStringLiteral("2.4 m"));
  type("building-overhang", QStringLiteral("0.6 m"));
  EXPECT_DOUBLE_EQ(onDisk().buildings.find(roof.id)->base.metres(), 2.4);
  EXPECT_DOUBLE_EQ(onDisk().buildings.find(roof.id)->overhang.metres(), 0.6);
  type("building-base", QStringLiteral("3.5 m"));
  EXPECT_TRUE(complains("building-base-wrong")) << "the eave is at 3 m";
  QTest::keyClick(shown<QLineEdit>("building-base"), Qt::Key_Escape);
  type("building-eave", QStringLiteral("2 m"));
  EXPECT_TRUE(complains("building-eave-wrong"));
  EXPECT_DOUBLE_EQ(onDisk().buildings.find(roof.id)->base.metres(), 2.4);
}

TEST_F(SunFields, SlopeAndTheWayItFalls) {
  type("yard-slope", QStringLiteral("5.7"));
  type("yard-aspect", QStringLiteral("180°"));
  EXPECT_NEAR(settings().slope.degrees(), 5.7, 1e-9);
  EXPECT_NEAR(settings().aspect.degrees(), 180.0, 1e-9);
  type("yard-slope", QStringLiteral("61"));
  EXPECT_TRUE(complains("yard-slope-wrong"));
  type("yard-aspect", QStringLiteral("south"));
  EXPECT_TRUE(complains("yard-aspect-wrong"));
  EXPECT_NEAR(settings().slope.degrees(), 5.7, 1e-9);
}

TEST_F(SunFields, ASkylineIsPastedFromATable) {
  auto* lines = shown<QPlainTextEdit>("yard-skyline");
  QGuiApplication::clipboard()->setText(QStringLiteral("azimuth\televation\n90\t12.5\n120\t8\n"));
  lines->setFocus();
  QTest::keyClick(lines, Qt::Key_V, Qt::ControlModifier);
  QTest::keyClick(lines, Qt::Key_Return, Qt::ControlModifier);
  ASSERT_EQ(settings().skyline.size(), 2u);
  EXPECT_NEAR(settings().skyline[1].azimuth.degrees(), 120.0, 1e-9);
  EXPECT_EQ(lines->toPlainText(), QStringLiteral("90, 12.5\n120, 8"));
  EXPECT_EQ(document.undoLabel(), QStringLiteral("Change skyline"));
}

TEST_F(SunFields, ABadLineOfTheSkylineIsNamedAndNothingIsLost) {
  auto* lines = shown<QPlainTextEdit>("yard-skyline");
  lines->setFocus();
  QTest::keyClicks(lines, QStringLiteral("90, 12"));
  QTest::keyClick(lines, Qt::Key_Return);
  QTest::keyClicks(lines, QStringLiteral("hill 9"));
  QTest::keyClick(lines, Qt::Key_Tab);  // leaves it
  ASSERT_TRUE(complains("yard-skyline-wrong"));
  EXPECT_TRUE(shown<QLabel>("yard-skyline-wrong")->text().startsWith(QStringLiteral("Line 2")));
  EXPECT_TRUE(settings().skyline.empty());
  EXPECT_EQ(lines->toPlainText(), QStringLiteral("90, 12\nhill 9")) << "kept to be mended";
  QTest::keyClick(lines, Qt::Key_Escape);
  EXPECT_EQ(lines->toPlainText(), QString());
}

}  // namespace
}  // namespace tussock
