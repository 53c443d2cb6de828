// SPDX-License-Identifier: MIT
// Arrangements kept under names, compared across the bench, and the one chosen planted.
#include <QComboBox>
#include <QLabel>
#include <set>

#include "core/planting/arrangements.h"
#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class NamedArrangements : public FillWindow {
 protected:
  [[nodiscard]] std::vector<std::vector<Point>> places() const {
    std::vector<std::vector<Point>> all;
    for (const Drift& drift : inFile().drifts) all.push_back(positionsOf(drift));
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
      return std::pair(a.front().x, a.front().y) < std::pair(b.front().x, b.front().y);
    });
    return all;
  }
  void name(const char* typed) const {
    auto* line = part<QLineEdit>("arrangement-name");
    ASSERT_TRUE(line);
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, QLatin1String(typed));
    QTest::keyClick(line, Qt::Key_Return);
  }
};

TEST_F(NamedArrangements, AreKeptAndRenamedInTheFile) {
  startBed(sunnyList());
  fillWith("fill-bed");
  push("fill-keep");
  ASSERT_EQ(inFile().arrangements.size(), 1u);
  EXPECT_EQ(inFile().arrangements.begin()->name, "Arrangement 1");
  name("By the book");
  EXPECT_EQ(inFile().arrangements.begin()->name, "By the book");
  name(" ");
  EXPECT_EQ(inFile().arrangements.begin()->name, "By the book") << "no name is none";
}

TEST_F(NamedArrangements, KeepingAsksForTheName) {
  startBed(sunnyList());
  fillWith("fill-bed");
  push("fill-keep");
  auto* line = qobject_cast<QLineEdit*>(window->focusWidget());
  ASSERT_TRUE(line);
  EXPECT_EQ(line->objectName(), QStringLiteral("arrangement-name"));
  EXPECT_EQ(line->selectedText(), QStringLiteral("Arrangement 1"));
  QTest::keyClicks(line, QStringLiteral("Low and calm"));
  QTest::keyClick(line, Qt::Key_Return);
  EXPECT_EQ(inFile().arrangements.begin()->name, "Low and calm");
  EXPECT_EQ(part<QLineEdit>("arrangement-name"), line) << "its picture is as it was";
}

// By the mouse or a key, at the bar or at the picture, the first or another: no button keeps the
// keys.
TEST_F(NamedArrangements, WhoeverKeepsOneGoesOnAtItsName) {
  startBed(sunnyList());
  fillWith("fill-bed");
  window->activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  std::size_t kept = 0;
  for (const char* button : {"fill-keep", "arrangement-keep"})
    for (const bool byKey : {false, true}) {
      auto* keep = part<QPushButton>(button);
      ASSERT_TRUE(keep);
      keep->setFocus();
      byKey ? QTest::keyClick(keep, Qt::Key_Space) : QTest::mouseClick(keep, Qt::LeftButton);
      QTest::qWait(20);
      ASSERT_EQ(inFile().arrangements.size(), ++kept);
      auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
      ASSERT_TRUE(line) << button << byKey;
      EXPECT_EQ(line->objectName(), QStringLiteral("arrangement-name"));
      EXPECT_TRUE(comesIntoSight(line)) << button << byKey;
      QTest::keyClicks(line, QStringLiteral("Number %1").arg(kept));
      QTest::keyClick(line, Qt::Key_Return);
      EXPECT_EQ(std::prev(inFile().arrangements.end())->name, "Number " + std::to_string(kept));
    }
}

TEST_F(NamedArrangements, NoTwoAreGivenOneName) {
  startBed(sunnyList());
  fillWith("fill-bed");
  push("fill-keep");
  push("fill-keep");
  push("arrangement-remove");
  push("fill-keep");
  std::set<std::string> names;
  for (const Arrangement& kept : inFile().arrangements) names.insert(kept.name);
  EXPECT_EQ(names.size(), 2u);
}

TEST_F(NamedArrangements, TheOneThatIsBetterIsPlantedFromTheComparison) {
  startBed(sunnyList());
  fillWith("fill-bed");
  const auto first = places();
  EXPECT_EQ(part<QPushButton>("fill-compare"), nullptr) << "there is nothing to compare with";
  push("fill-keep");
  fillWith("fill-another");
  ASSERT_NE(places(), first);
  push("fill-compare");
  ASSERT_TRUE(part<QComboBox>("compare-right"));
  EXPECT_EQ(part<QComboBox>("compare-right")->currentText(), QStringLiteral("Arrangement 1"));
  EXPECT_TRUE(comesIntoSight(part<QLabel>("compare-facts-left")));
  EXPECT_TRUE(comesIntoSight(part<QLabel>("compare-facts-right")));
  push("compare-plant-right");
  EXPECT_EQ(places(), first);
  trigger("actionUndo");
  EXPECT_NE(places(), first) << "one edit";
}

TEST_F(NamedArrangements, OneThatIsRemovedIsGoneFromTheFile) {
  startBed(sunnyList());
  fillWith("fill-bed");
  push("fill-keep");
  push("arrangement-remove");
  EXPECT_TRUE(inFile().arrangements.empty());
  EXPECT_GT(inFile().drifts.size(), 0u) << "what is planted stays";
}

}  // namespace
}  // namespace tussock::test
