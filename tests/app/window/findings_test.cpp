// SPDX-License-Identifier: MIT
// The list of findings in the window: a click shows the place, a reason puts one away.
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

#include "app/panels/finding_row.h"
#include "app/panels/findings_list.h"
#include "core/checks/registry.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class FindingsTest : public test::WindowTest {
 protected:
  // Two plants 10 cm apart, far from where the canvas looks.
  void startCrowded() {
    start(test::YardBuilder()
              .bed("Walk", "POLYGON((0 0, 60 0, 60 3, 0 3, 0 0))")
              .drift("Echinacea purpurea", {{50, 1.5}, {50.1, 1.5}, {51, 1.5}})
              .build());
    document.waitForAnalysis();
    QCoreApplication::processEvents();
  }
  [[nodiscard]] FindingRow* row(CheckId check) const {
    for (FindingRow* each : window->findChildren<FindingRow*>())
      if (each->finding().check == check && each->isVisibleTo(window.get())) return each;
    return nullptr;
  }
  [[nodiscard]] QPushButton* button(FindingRow* of, const char* name) const {
    return of->findChild<QPushButton*>(QString::fromLatin1(name));
  }
  void expectShown() {
    const Box seen = canvas().mapping().visible();
    EXPECT_TRUE(seen.contains({50.05, 1.5}));
    EXPECT_LT(seen.width(), 20.0) << "close enough to see two plants";
    ASSERT_EQ(document.selection().size(), 1u);
    EXPECT_EQ(document.selection().front(), refTo(yard().drifts.begin()->id));
  }
};

TEST_F(FindingsTest, AClickOnOneShowsThePlace) {
  startCrowded();
  FindingRow* spacing = row(CheckId::Spacing);
  ASSERT_TRUE(spacing);
  ASSERT_FALSE(canvas().mapping().visible().contains({50.05, 1.5}));
  auto* words = spacing->findChild<QLabel*>(QStringLiteral("finding-text"));
  QTest::mouseClick(words, Qt::LeftButton);
  expectShown();
}

TEST_F(FindingsTest, SoDoesItsButton) {
  startCrowded();
  QTest::mouseClick(button(row(CheckId::Spacing), "finding-show"), Qt::LeftButton);
  expectShown();
}

TEST_F(FindingsTest, AReasonIsKeptInTheFileAndTakesTheMarkOffThePlan) {
  startCrowded();
  const std::string key = keyOf(row(CheckId::Spacing)->finding());
  const auto marked = [&] {
    for (const FindingMark& mark : canvas().marks().marks())
      if (mark.key == key) return true;
    return false;
  };
  EXPECT_TRUE(marked());
  FindingRow* spacing = row(CheckId::Spacing);
  QTest::mouseClick(button(spacing, "finding-accept"), Qt::LeftButton);
  auto* reason = spacing->findChild<QLineEdit*>(QStringLiteral("finding-reason"));
  QTest::keyClick(reason, Qt::Key_Return);
  EXPECT_TRUE(inFile().acceptances.empty()) << "a reason is asked for";
  QTest::keyClicks(reason, QStringLiteral("One of them moves in fall"));
  QTest::keyClick(reason, Qt::Key_Return);
  ASSERT_EQ(inFile().acceptances.size(), 1u);
  EXPECT_EQ(inFile().acceptances.begin()->reason, "One of them moves in fall");
  EXPECT_FALSE(marked());
  trigger("actionUndo");
  EXPECT_TRUE(inFile().acceptances.empty());
  EXPECT_TRUE(marked());
}

TEST_F(FindingsTest, SettlingMendsIt) {
  startCrowded();
  QTest::mouseClick(button(row(CheckId::Spacing), "finding-settle"), Qt::LeftButton);
  document.waitForAnalysis();
  QCoreApplication::processEvents();
  EXPECT_FALSE(row(CheckId::Spacing));
  const auto plants = inFile().drifts.begin()->plants;
  EXPECT_GE(distance(plants[0].at, plants[1].at), 0.85 * 0.4 - 0.001);
}

}  // namespace
}  // namespace tussock
