// SPDX-License-Identifier: MIT
// Whatever the window's size, filling the selected bed needs no scrolling.
#include <QLabel>
#include <QScrollArea>
#include <QSlider>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

constexpr auto kFilling = {"fill-bed", "fill-another", "fill-gaps", "fill-species"};
constexpr auto kAfterwards = {"fill-keep", "fill-score-open"};

class FillInSight : public FillWindow, public testing::WithParamInterface<QSize> {
 protected:
  void startSized() {
    window->resize(GetParam());
    startBed(sunnyList());
  }
  void expectInSight(std::initializer_list<const char*> names) const {
    for (const char* name : names) EXPECT_TRUE(comesIntoSight(part<QPushButton>(name))) << name;
  }
};

TEST_P(FillInSight, ButtonsAndSliderBeforeAndAfter) {
  startSized();
  expectInSight(kFilling);
  EXPECT_TRUE(comesIntoSight(part<QSlider>("bed-wildness")));
  fillWith("fill-bed");
  document.waitForAnalysis();
  EXPECT_GT(inFile().drifts.size(), 2u);
  expectInSight(kFilling);
  expectInSight(kAfterwards);
  EXPECT_TRUE(comesIntoSight(part<QSlider>("bed-wildness")));
  if (!filling().notesOf(bed).empty()) {
    EXPECT_TRUE(comesIntoSight(part<QLabel>("fill-notes")));
  }
}

TEST_P(FillInSight, TheScoreIsBroughtIntoView) {
  startSized();
  fillWith("fill-bed");
  push("fill-score-open");
  EXPECT_TRUE(comesIntoSight(part<QPushButton>("fill-score-head")));
  push("fill-keep");
  EXPECT_EQ(inFile().arrangements.size(), 1u);
}

// Six rules of twenty pixels: the findings keep their heading meanwhile.
TEST_P(FillInSight, TheScoreHasRoomForManyRules) {
  startSized();
  fillWith("fill-bed");
  document.waitForAnalysis();
  const auto* findings = part<QLabel>("findings-count");
  const auto shown = [this] {
    const auto* score = part<QWidget>("fill-score");
    return score ? score->visibleRegion().boundingRect().height() : 0;
  };
  push("fill-score-open");
  EXPECT_TRUE(QTest::qWaitFor([&] { return shown() >= 120; })) << shown();
  EXPECT_TRUE(comesIntoSight(findings));
  push("fill-score-head");
  EXPECT_EQ(shown(), 0);
}

INSTANTIATE_TEST_SUITE_P(Sizes, FillInSight, testing::Values(QSize(1280, 800), QSize(1600, 1000)));

using NoFindings = FillWindow;

TEST_F(NoFindings, TakeNoMoreThanALine) {
  startBed();
  QTest::qWait(20);
  const auto* area = window->findChild<QScrollArea*>(QStringLiteral("margin-findings"));
  EXPECT_FALSE(area->isVisible());
  const auto* count = part<QLabel>("findings-count");
  ASSERT_TRUE(count);
  EXPECT_EQ(count->text(), QStringLiteral("nothing is planted yet"));
  EXPECT_LT(count->parentWidget()->parentWidget()->height(), 2 * count->sizeHint().height() + 20);
}

}  // namespace
}  // namespace tussock::test
