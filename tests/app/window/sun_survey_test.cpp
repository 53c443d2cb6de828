// SPDX-License-Identifier: MIT
// The survey is made up from a yard whose oak is 9 m high, then put to one drawn with 6 m.
#include "app/document/sun_survey.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/canvas/label.h"
#include "app/canvas/reading_words.h"
#include "app/panels/margin_panel.h"
#include "core/edit/draft.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class SurveyWindow : public WindowTest {
 protected:
  [[nodiscard]] static Yard yardWithOak(double metres) {
    YardBuilder builder;
    builder.bed("Walk", "POLYGON((-4 -1,8 -1,8 6,-4 6,-4 -1))").tree("Oak", {2.0, -1.0}, 0.3);
    Yard yard = builder.build();
    Tree oak = *yard.trees.begin();
    oak.height = Length::metres(metres);
    oak.crownRadius = Length::metres(2.0);
    oak.crownBase = Length::metres(2.0);
    yard.trees = yard.trees.with(oak);
    return yard;
  }
  // Readings as someone under the true oak would have noted them.
  void startSurveyed() {
    Yard truth = yardWithOak(9.0);
    std::int64_t id = 1000;
    for (const Point at : {Point{0.5, 2.0}, Point{2.0, 3.0}, Point{3.5, 2.0}, Point{2.0, 4.5},
                           Point{1.0, 4.0}, Point{3.0, 4.0}}) {
      SunReading reading;
      reading.id = Id<SunReading>(++id);
      reading.at = at;
      reading.day = Date{std::chrono::year(2026), std::chrono::month(9), std::chrono::day(10)};
      truth.sunReadings = truth.sunReadings.with(reading);
    }
    Yard drawn = yardWithOak(6.0);
    for (const ReadingCompared& each : compareReadings(truth)) {
      SunReading reading = *truth.sunReadings.find(each.reading);
      reading.hours = each.computed;
      drawn.sunReadings = drawn.sunReadings.with(reading);
    }
    start(drawn);
    survey().wait();
    QTest::qWait(0);  // lets the margin lay the survey out
  }
  [[nodiscard]] SunSurvey& survey() const {
    return window->findChild<MarginPanel*>(QStringLiteral("margin"))->survey();
  }
  template <class W>
  W* shown(const char* name) const {
    for (W* found : window->findChildren<W*>(QLatin1String(name)))
      if (found->isVisible()) return found;
    return nullptr;
  }
  void clickOn(const char* name) const {
    auto* button = shown<QPushButton>(name);
    ASSERT_TRUE(button) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  [[nodiscard]] Tree oak() const { return *inFile().trees.begin(); }
};

TEST_F(SurveyWindow, HoursSeenAreNotedWhereOneClicks) {
  start(yardWithOak(6.0));
  key(Qt::Key_U);
  clickOn("sun-note");
  click({1.0, 2.0});
  type(QStringLiteral("4:30"));
  const Yard kept = inFile();
  ASSERT_EQ(kept.sunReadings.size(), 1u);
  const SunReading reading = *kept.sunReadings.begin();
  EXPECT_DOUBLE_EQ(reading.hours, 4.5);
  EXPECT_NEAR(reading.at.x, 1.0, 0.02);
  EXPECT_EQ(reading.day, canvas().sunView().choice().day);
  EXPECT_EQ(document.selection(), std::vector{refTo(reading.id)});
  survey().wait();
  ASSERT_EQ(survey().compared().size(), 1u);
  EXPECT_DOUBLE_EQ(survey().compared()[0].observed, 4.5);
  trigger("actionUndo");
  EXPECT_TRUE(inFile().sunReadings.empty());
}

TEST_F(SurveyWindow, AClickOnTheStripIsNotMeantForThePlanBelow) {
  start(yardWithOak(6.0));
  key(Qt::Key_U);
  clickOn("sun-note");
  auto* words = shown<QLabel>("sun-words");
  ASSERT_TRUE(words);
  // As the window system gives it: to the innermost part under the pointer.
  QTest::mouseClick(words, Qt::LeftButton);
  EXPECT_FALSE(shown<QWidget>("canvasField"));
  QTest::mouseClick(shown<QWidget>("sun-strip"), Qt::LeftButton, {}, QPoint(2, 2));
  EXPECT_FALSE(shown<QWidget>("canvasField"));
  click({1.0, 2.0});
  EXPECT_TRUE(shown<QWidget>("canvasField"));
}

TEST_F(SurveyWindow, ARowTellsWhereItWasSeen) {
  startSurveyed();
  const SunReading first = *inFile().sunReadings.begin();
  const auto rowWords = [&] {
    QStringList words;
    for (const QLabel* label :
         window->findChild<QWidget*>(QStringLiteral("survey"))->findChildren<QLabel*>())
      if (label->isVisible()) words << label->text();
    return words;
  };
  ASSERT_TRUE(QTest::qWaitFor([&] { return rowWords().count(QStringLiteral("Walk")) == 6; }));
  document.select({refTo(first.id)});
  auto* note = [&]() -> QLineEdit* {
    QLineEdit* found = nullptr;
    (void)QTest::qWaitFor([&] { return (found = shown<QLineEdit>("reading-note")) != nullptr; });
    return found;
  }();
  ASSERT_TRUE(note);
  note->setFocus();
  QTest::keyClicks(note, QStringLiteral("By the gate"));
  QTest::keyClick(note, Qt::Key_Return);
  EXPECT_EQ(inFile().sunReadings.find(first.id)->note, "By the gate");
  document.select({});
  EXPECT_TRUE(QTest::qWaitFor([&] {
    return rowWords().contains(QStringLiteral("By the gate")) &&
           rowWords().count(QStringLiteral("Walk")) == 5;
  }));
}

TEST_F(SurveyWindow, ItsDayLiesWhereTheSunIsKnownWell) {
  startSurveyed();
  const SunReading before = *inFile().sunReadings.begin();
  document.select({refTo(before.id)});
  QTest::qWait(0);
  auto* day = shown<QLineEdit>("reading-day");
  ASSERT_TRUE(day);
  day->setFocus();
  day->selectAll();
  QTest::keyClicks(day, QStringLiteral("1800-01-01"));
  QTest::keyClick(day, Qt::Key_Return);
  EXPECT_EQ(inFile().sunReadings.begin()->day, before.day);
}

TEST_F(SurveyWindow, WhatCannotBeHoursIsAskedAgain) {
  start(yardWithOak(6.0));
  trigger("toolReading");
  click({1.0, 2.0});
  type(QStringLiteral("30"));
  EXPECT_TRUE(canvas().asking());
  EXPECT_TRUE(inFile().sunReadings.empty());
  canvas().findChild<QLineEdit*>(QStringLiteral("canvasFieldText"))->selectAll();
  type(QStringLiteral("3"));
  EXPECT_EQ(inFile().sunReadings.size(), 1u);
}

TEST_F(SurveyWindow, MoreSunThanTheDayHasIsAskedAgain) {
  start(yardWithOak(6.0));
  trigger("toolReading");
  click({1.0, 2.0});
  type(QStringLiteral("20"));
  EXPECT_TRUE(canvas().asking());
  EXPECT_TRUE(inFile().sunReadings.empty());
  canvas().findChild<QLineEdit*>(QStringLiteral("canvasFieldText"))->selectAll();
  type(QStringLiteral("3"));
  const Yard kept = inFile();
  ASSERT_EQ(kept.sunReadings.size(), 1u);
  QTest::qWait(0);
  auto* hours = shown<QLineEdit>("reading-hours");
  ASSERT_TRUE(hours);
  hours->setFocus();
  hours->selectAll();
  QTest::keyClicks(hours, QStringLiteral("20"));
  QTest::keyClick(hours, Qt::Key_Return);
  EXPECT_DOUBLE_EQ(inFile().sunReadings.begin()->hours, 3.0);
}

// As another program's file may bring it.
TEST_F(SurveyWindow, AReadingThatCannotBeIsLeftOutAndToldOf) {
  Yard yard = yardWithOak(6.0);
  SunReading reading;
  reading.id = Id<SunReading>(1001);
  reading.at = {1.0, 2.0};
  reading.day = Date{std::chrono::year(2026), std::chrono::month(9), std::chrono::day(10)};
  reading.hours = 20.0;
  yard.sunReadings = yard.sunReadings.with(reading);
  start(yard);
  survey().wait();
  QTest::qWait(0);
  EXPECT_TRUE(survey().compared().empty());
  auto* unused = shown<QLabel>("survey-unused");
  ASSERT_TRUE(unused);
  EXPECT_TRUE(unused->text().contains(QStringLiteral("20 h cannot have been seen")))
      << qPrintable(unused->text());
  EXPECT_FALSE(shown<QPushButton>("survey-look"));
}

TEST_F(SurveyWindow, TreesThatFitAreOfferedAndChangedOnlyOnAsking) {
  startSurveyed();
  EXPECT_GT(rmsOf(survey().compared()), 0.3);
  EXPECT_TRUE(shown<QLabel>("survey-sum"));
  clickOn("survey-look");
  ASSERT_TRUE(QTest::qWaitFor([&] { return survey().offer().has_value(); }, 60000));
  EXPECT_DOUBLE_EQ(oak().height.metres(), 6.0) << "nothing unasked";
  ASSERT_TRUE(shown<QLabel>("survey-offer"));
  EXPECT_TRUE(shown<QLabel>("survey-offer")->text().contains(QStringLiteral("Oak: height")));
  QTest::qWait(0);
  auto* leave = shown<QPushButton>("survey-dismiss");
  EXPECT_TRUE(leave->hasFocus()) << "not lost with the button that is gone";
  EXPECT_EQ(leave->visibleRegion().boundingRect(), leave->rect()) << "scrolled into view";
  clickOn("survey-apply");
  survey().wait();
  EXPECT_NEAR(oak().height.metres(), 9.0, 0.4) << "what the readings were made from";
  EXPECT_LT(rmsOf(survey().compared()), 0.1);
  EXPECT_FALSE(survey().offer());
  trigger("actionUndo");
  EXPECT_DOUBLE_EQ(oak().height.metres(), 6.0);
}

TEST_F(SurveyWindow, AnEditTakesTheOfferAway) {
  startSurveyed();
  clickOn("survey-look");
  ASSERT_TRUE(QTest::qWaitFor([&] { return survey().offer().has_value(); }, 60000));
  document.commit(removeObjects(yard(), {refTo(yard().sunReadings.begin()->id)}));
  EXPECT_FALSE(survey().offer());
  survey().wait();
  EXPECT_EQ(survey().compared().size(), 5u);
}

// A word that stands where the reading's own would go does not take it away.
TEST_F(SurveyWindow, WhatWasSeenAndComputedStandsOnThePlan) {
  startSurveyed();
  const ReadingCompared first = survey().compared()[0];
  const SunReading* reading = yard().sunReadings.find(first.reading);
  std::vector<Label> labels;
  canvas()
      .scene()
      .find(refTo(first.reading))
      ->addLabels(labels, canvas().mapping(), canvas().look());
  ASSERT_EQ(labels.size(), 1u);
  EXPECT_EQ(labels[0].lines[0], readingWords(first.observed, first.computed));
  EXPECT_EQ(readingWords(4.5, 3.9), QStringLiteral("4.5 h seen, 3.9 computed: +0.6 h"));
  const QRectF there(canvas().mapping().toPixels(reading->at) - QPointF(60, 40), QSizeF(120, 80));
  EXPECT_EQ(placeLabels(labels, {there}).size(), 1u) << "beside, with a line";
  const QPointF mark = canvas().mapping().toPixels(reading->at);
  const QRectF below(mark + QPointF(-90, 8), QSizeF(180, 18));
  std::vector<QRectF> taken{below};
  canvas().scene().find(refTo(first.reading))->addTaken(taken, canvas().mapping());
  const auto moved = placeLabels(labels, taken);
  ASSERT_EQ(moved.size(), 1u);
  EXPECT_FALSE(moved[0].box.contains(mark)) << "words do not lie over the mark";
}

// The mark is as strong on the map as off it.
TEST_F(SurveyWindow, MarksLieOverTheMap) {
  startSurveyed();
  canvas().sunView().waitForMap();
  const Point at = yard().sunReadings.begin()->at;
  lookAt(at);
  const QColor without = canvas().grab().toImage().pixelColor(pixels(at));
  key(Qt::Key_U);
  canvas().sunView().waitForMap();
  lookAt(at);
  EXPECT_EQ(canvas().grab().toImage().pixelColor(pixels(at)), without);
}

TEST_F(SurveyWindow, AnOfferCanBeLeft) {
  startSurveyed();
  clickOn("survey-look");
  ASSERT_TRUE(QTest::qWaitFor([&] { return survey().offer().has_value(); }, 60000));
  QTest::qWait(0);
  clickOn("survey-dismiss");
  EXPECT_FALSE(survey().offer());
  EXPECT_DOUBLE_EQ(oak().height.metres(), 6.0);
  EXPECT_TRUE(shown<QPushButton>("survey-look"));
}

}  // namespace
}  // namespace tussock::test
