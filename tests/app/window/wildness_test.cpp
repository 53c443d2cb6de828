// SPDX-License-Identifier: MIT
// The slider from formal to natural, dragged and stepped as a person does.
#include <QSlider>
#include <QStyle>
#include <QStyleOptionSlider>

#include "tests/app/window/fill_window.h"

namespace tussock::test {
namespace {

class Wildness : public FillWindow {
 protected:
  // The handle of the slider, to an end of its groove.
  void dragTo(double share) const {
    auto* slider = part<QSlider>("bed-wildness");
    ASSERT_TRUE(slider);
    const auto at = [&](double value) {
      const int room = slider->width() - 16;
      return QPoint(8 + int(std::lround(room * value)), slider->height() / 2);
    };
    const QPoint from = at(slider->value() / 100.0), to = at(share);
    QTest::mousePress(slider, Qt::LeftButton, {}, from);
    for (const double part : {0.3, 0.6, 1.0}) {
      const QPoint here = from + (to - from) * part;
      QMouseEvent move(QEvent::MouseMove, here, slider->mapToGlobal(here), Qt::NoButton,
                       Qt::LeftButton, {});
      QApplication::sendEvent(slider, &move);
    }
    QTest::mouseRelease(slider, Qt::LeftButton, {}, to);
    QCoreApplication::processEvents();
  }
  [[nodiscard]] double inTheFile() const { return inFile().beds.find(bed)->wildness; }
};

TEST_F(Wildness, IsWrittenOnceTheHandleIsLetGo) {
  startBed();
  dragTo(1.0);
  EXPECT_GT(inTheFile(), 0.9);
  EXPECT_EQ(undoLabel(), QStringLiteral("Change manner of planting"));
  trigger("actionUndo");
  EXPECT_EQ(inTheFile(), 0.5);
  EXPECT_TRUE(undoLabel().isEmpty()) << "one edit";
}

// Every step is on disk, and the run is one entry of the history.
TEST_F(Wildness, ARunOfKeysAndPressesIsOneEdit) {
  startBed();
  auto* slider = part<QSlider>("bed-wildness");
  ASSERT_TRUE(slider);
  slider->setFocus();
  for (int i = 1; i <= 3; ++i) {
    QTest::keyClick(slider, Qt::Key_Right);
    EXPECT_NEAR(inTheFile(), 0.5 + 0.01 * i, 1e-9);
  }
  QTest::mouseClick(slider, Qt::LeftButton, {}, {slider->width() - 4, slider->height() / 2});
  EXPECT_GT(inTheFile(), 0.55);
  EXPECT_EQ(slider->value(), qRound(100.0 * inTheFile()));
  EXPECT_EQ(undoLabel(), QStringLiteral("Change manner of planting"));
  const double last = inTheFile();
  trigger("actionUndo");
  EXPECT_EQ(inTheFile(), 0.5);
  EXPECT_EQ(slider->value(), 50);
  EXPECT_TRUE(slider->toolTip().startsWith(QStringLiteral("50 % natural")));
  EXPECT_TRUE(undoLabel().isEmpty());
  trigger("actionRedo");
  EXPECT_EQ(inTheFile(), last);
}

TEST_F(Wildness, BackWhereItBeganThereIsNothingToUndo) {
  startBed();
  auto* slider = part<QSlider>("bed-wildness");
  QTest::keyClick(slider, Qt::Key_Right);
  QTest::keyClick(slider, Qt::Key_Left);
  EXPECT_EQ(inTheFile(), 0.5);
  EXPECT_TRUE(undoLabel().isEmpty());
  QTest::keyClick(slider, Qt::Key_Left);
  EXPECT_FALSE(undoLabel().isEmpty());
}

// What is done between is kept apart: an edit, an undo, another thing selected.
TEST_F(Wildness, WhatComesBetweenEndsTheRun) {
  startBed();
  const auto step = [this](Qt::Key key) { QTest::keyClick(part<QSlider>("bed-wildness"), key); };
  step(Qt::Key_Right);
  list("Zizia aurea");
  ASSERT_EQ(listInFile().size(), 1u);
  step(Qt::Key_Right);
  trigger("actionUndo");
  EXPECT_NEAR(inTheFile(), 0.51, 1e-9);
  EXPECT_EQ(listInFile().size(), 1u);
  trigger("actionUndo");
  EXPECT_TRUE(listInFile().empty());
  step(Qt::Key_Right);
  trigger("actionUndo");
  EXPECT_NEAR(inTheFile(), 0.51, 1e-9) << "the step before was undone and done anew";
  document.select({});
  document.select({refTo(bed)});
  step(Qt::Key_Right);
  trigger("actionUndo");
  EXPECT_NEAR(inTheFile(), 0.51, 1e-9);
  trigger("actionUndo");
  EXPECT_EQ(inTheFile(), 0.5);
}

// More species, in smaller drifts: what the slider's own words promise.
TEST_F(Wildness, NaturalPlantsMoreSpeciesThanFormal) {
  startBed({}, "POLYGON((0 0, 10 0, 10 4, 0 4, 0 0))");
  const auto planted = [&](double share) {
    dragTo(share);
    fillWith("fill-bed");
    return inFile();
  };
  const Yard formal = planted(0.0), natural = planted(1.0);
  EXPECT_LT(speciesIn(formal).size(), speciesIn(natural).size());
  EXPECT_LT(formal.drifts.size(), natural.drifts.size());
}

}  // namespace
}  // namespace tussock::test
