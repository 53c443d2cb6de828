// SPDX-License-Identifier: MIT
// Shadows at an instant, by keys and mouse: the date, the hour, and the day that plays.
#include "app/canvas/sun_compass.h"
#include "app/look/motion.h"
#include "app/panels/day_ribbon.h"
#include "app/panels/year_dial.h"
#include "app/panels/year_ruler.h"
#include "tests/app/window/sun_window.h"

namespace tussock::test {
namespace {

TEST_F(SunInTheWindow, TheClockIsThatOfThePlace) {
  startShaded();
  auto* zone = part<QLineEdit>("yard-time-zone");
  zone->selectAll();
  QTest::keyClicks(zone, QStringLiteral("America/New_York"));
  QTest::keyClick(zone, Qt::Key_Return);
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2027-07-04"));
  EXPECT_EQ(part<QLabel>("sun-clock")->text(), QStringLiteral("12:00 EDT"));
  typeDate(QStringLiteral("2027-01-04"));
  EXPECT_EQ(part<QLabel>("sun-clock")->text(), QStringLiteral("12:00 EST"));
  typeDate(QStringLiteral("2027-13-04"));
  EXPECT_TRUE(words().contains(QStringLiteral("2027-13-04")));
  EXPECT_EQ(view().choice().day,
            (Date{std::chrono::year(2027), std::chrono::month(1), std::chrono::day(4)}))
      << "what cannot be read changes nothing";
  typeDate(QStringLiteral("1949-12-31"));
  EXPECT_TRUE(words().contains(QStringLiteral("from 1950 to 2050")));
  EXPECT_EQ(int(view().choice().day.year()), 2027);
}

TEST_F(SunInTheWindow, TheDateStopsWhereTheSunIsKnownWell) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2050-12-31"));
  auto* date = part<QLineEdit>("sun-date");
  QTest::keyClick(date, Qt::Key_Up);
  EXPECT_EQ(date->text(), QStringLiteral("2050-12-31"));
  QTest::keyClick(date, Qt::Key_Down);
  EXPECT_EQ(date->text(), QStringLiteral("2050-12-30"));
}

TEST_F(SunInTheWindow, ArrowKeysStepTheDateAndTheTime) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2027-01-31"));
  auto* date = part<QLineEdit>("sun-date");
  QTest::keyClick(date, Qt::Key_PageUp);
  EXPECT_EQ(date->text(), QStringLiteral("2027-02-28")) << "no 31 February";
  QTest::keyClick(date, Qt::Key_Up);
  EXPECT_EQ(date->text(), QStringLiteral("2027-03-01"));
  auto* day = part<DayRibbon>("sun-day");
  QTest::keyClick(day, Qt::Key_PageUp);
  QTest::keyClick(day, Qt::Key_Left);
  EXPECT_EQ(view().choice().minute, 12 * 60 + 55);
}

// The keys would otherwise go on to whatever comes after the dial, such as the search for plants.
TEST_F(SunInTheWindow, PutAwayFromItsDialItLeavesTheKeysToThePlan) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  auto* year = part<YearDial>("sun-year");
  year->setFocus();
  ASSERT_TRUE(QTest::qWaitFor([&] { return year->hasFocus(); }));
  QTest::keyClick(year, Qt::Key_U, Qt::ShiftModifier);
  EXPECT_FALSE(strip()->isVisible());
  EXPECT_TRUE(canvas().hasFocus());
}

TEST_F(SunInTheWindow, TheSunIsDraggedThroughTheDay) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  auto* day = part<DayRibbon>("sun-day");
  const auto at = [day](int hour) { return QPoint(int(std::lround(day->xOf(hour * 60))), 16); };
  QTest::mousePress(day, Qt::LeftButton, {}, at(12));
  QMouseEvent move(QEvent::MouseMove, QPointF(at(17)), day->mapToGlobal(QPointF(at(17))),
                   Qt::NoButton, Qt::LeftButton, {});
  QApplication::sendEvent(day, &move);
  QTest::mouseRelease(day, Qt::LeftButton, {}, at(17));
  EXPECT_EQ(view().choice().minute, 17 * 60);
}

TEST_F(SunInTheWindow, TheSunIsDraggedAlongItsPath) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2027-06-21"));
  const Settings settings = yard().settings;
  const auto at = [&](int hour) {
    const UtcTime time = view().civilDay().at(hour * 60);
    return onCompass(canvas().compass(), canvas().compassMiddle(),
                     sunPosition(time, settings.latitude, settings.longitude))
        .toPoint();
  };
  const Yard before = yard();
  QTest::mousePress(&canvas(), Qt::LeftButton, {}, at(12));
  QTest::mouseMove(&canvas(), at(16));
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, at(16));
  EXPECT_NEAR(view().choice().minute, 16 * 60, 10) << "whole pixels";
  EXPECT_EQ(yard(), before);
  const int now = view().choice().minute;
  const QPointF south = canvas().compassMiddle() + QPointF(0.0, canvas().compass().radius - 4.0);
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, south.toPoint());
  EXPECT_EQ(view().choice().minute, now) << "not the sun, nor its path";
}

TEST_F(SunInTheWindow, PlayRunsTheDayUnlessLessMotionIsAskedFor) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  const int noon = view().choice().minute;
  if (!lessMotion()) {
    clickOn("sun-play");
    EXPECT_TRUE(QTest::qWaitFor([&] { return view().choice().minute > noon + 10; }, 5000));
  }
  trigger("actionLessMotion");
  const int now = view().choice().minute;
  QTest::qWait(200);
  EXPECT_EQ(view().choice().minute, now) << "still";
  clickOn("sun-play");
  EXPECT_EQ(view().choice().minute, now + 60) << "an hour at a click";
  QTest::qWait(200);
  EXPECT_EQ(view().choice().minute, now + 60);
}

TEST_F(SunInTheWindow, PlaySaysThatPolarNightHasNothingToShow) {
  Yard north = YardBuilder().bed("Walk", "POLYGON((0 0,6 0,6 3,0 3,0 0))").build();
  north.settings.latitude = Angle::degrees(80);
  start(north);
  settle();
  key(Qt::Key_U, Qt::ShiftModifier);
  if (lessMotion()) GTEST_SKIP() << "the system moves nothing by itself";
  typeDate(QStringLiteral("2027-12-21"));
  EXPECT_TRUE(words().startsWith(QStringLiteral("Polar night")));
  const int now = view().choice().minute;
  clickOn("sun-play");
  EXPECT_TRUE(words().contains(QStringLiteral("nothing to play"))) << words().toStdString();
  QTest::qWait(200);
  EXPECT_EQ(view().choice().minute, now);
  EXPECT_EQ(part<QPushButton>("sun-play")->text(), QStringLiteral("Play the day"));
}

TEST_F(SunInTheWindow, NothingMovesAsideWhenPlayBecomesStop) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  if (lessMotion()) GTEST_SKIP() << "the system moves nothing by itself";
  QTest::qWait(0);
  const QRect before = part<QPushButton>("sun-play")->geometry();
  clickOn("sun-play");
  QTest::qWait(0);
  EXPECT_EQ(part<QPushButton>("sun-play")->text(), QStringLiteral("Stop"));
  EXPECT_EQ(part<QPushButton>("sun-play")->geometry(), before);
  clickOn("sun-play");
}

// A hill of 20 degrees in the east. At 38.4° N the sun stands that high in March two hours after it
// has risen: about 1.7 h for 20° at 51.6° of slant (sin 20° / (15°/h cos 38.4°), by hand).
TEST_F(SunInTheWindow, TheSkylineIsToldAndShown) {
  Yard valley = YardBuilder().bed("Walk", "POLYGON((0 0,6 0,6 3,0 3,0 0))").build();
  const Angle high = Angle::degrees(20);
  valley.settings.skyline = {{Angle::degrees(1), high},
                             {Angle::degrees(150), high},
                             {Angle::degrees(160), Angle()},
                             {Angle::degrees(359), Angle()}};
  start(valley);
  settle();
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2027-03-20"));
  EXPECT_TRUE(words().contains(QStringLiteral("; behind the skyline until ")))
      << words().toStdString();
  int first = 0, up = 0;
  for (int minute = 0; minute < kMinutesInDay && first == 0; ++minute) {
    const SunPosition sun = sunPosition(view().civilDay().at(minute), valley.settings.latitude,
                                        valley.settings.longitude);
    if (up == 0 && sun.altitude > Angle()) up = minute;
    if (view().isLitAt(minute)) first = minute;
  }
  EXPECT_NEAR(first - up, 102, 12);
  auto* day = part<DayRibbon>("sun-day");
  const QImage ribbon = day->grab().toImage();
  const auto at = [&](int minute) { return ribbon.pixelColor(int(day->xOf(minute)), 12); };
  EXPECT_NE(at(first - 30), at(first + 60)) << "not bright while the ground is dark";
  EXPECT_NE(at(first - 30), at(60)) << "nor night";
  SunChoice early = view().choice();
  early.minute = first - 30;
  view().choose(early);
  EXPECT_FALSE(canvas().compass().shining);
  const QPointF hill = onCompass(canvas().compass(), canvas().compassMiddle(),
                                 {Angle::degrees(40), Angle::degrees(8)});
  const QPointF open = onCompass(canvas().compass(), canvas().compassMiddle(),
                                 {Angle::degrees(320), Angle::degrees(8)});
  const QImage shown = canvas().grab().toImage();
  EXPECT_LT(shown.pixelColor(hill.toPoint()).lightness() + 20,
            shown.pixelColor(open.toPoint()).lightness());
}

TEST_F(SunInTheWindow, TheYearIsSweptWithTheMouse) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2027-06-21"));
  auto* year = part<YearDial>("sun-year");
  const auto at = [&](unsigned month, unsigned day) {
    const Date date{std::chrono::year(2027), std::chrono::month(month), std::chrono::day(day)};
    return QPoint(int(std::lround(year->xOf(date))), 16);
  };
  QTest::mousePress(year, Qt::LeftButton, {}, at(6, 21));
  QMouseEvent move(QEvent::MouseMove, QPointF(at(11, 10)), year->mapToGlobal(QPointF(at(11, 10))),
                   Qt::NoButton, Qt::LeftButton, {});
  QApplication::sendEvent(year, &move);
  QTest::mouseRelease(year, Qt::LeftButton, {}, at(11, 10));
  const Date day = view().choice().day;
  EXPECT_EQ(day.year(), std::chrono::year(2027));
  EXPECT_NEAR(double(std::chrono::sys_days(day).time_since_epoch().count()),
              double(std::chrono::sys_days(
                         Date{std::chrono::year(2027), std::chrono::November, std::chrono::day(10)})
                         .time_since_epoch()
                         .count()),
              1.0)
      << "whole pixels";
  EXPECT_EQ(part<QLineEdit>("sun-date")->text().toStdString(), formatDate(day));
  EXPECT_EQ(canvas().look().day, MonthDay(day.month(), day.day())) << "leaves are of that day";
  EXPECT_EQ(canvas().look().week, weekOf({day.month(), day.day()})) << "and so is bloom";
  QTest::keyClick(year, Qt::Key_PageDown);
  EXPECT_EQ(view().choice().day.month(), std::chrono::October);
}

TEST_F(SunInTheWindow, TheYearRulerSetsTheDateOfTheShadows) {
  startShaded();
  auto* ruler = part<YearRuler>("year-ruler");
  ASSERT_FALSE(canvas().look().week);
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2027-06-21"));
  EXPECT_EQ(ruler->week(), 24);
  QTest::mouseClick(ruler, Qt::LeftButton, {}, QPoint(int(ruler->xOfWeek(2.5)), 10));
  EXPECT_EQ(formatDate(view().choice().day), "2027-01-18");
  EXPECT_EQ(canvas().look().week, 2);
  key(Qt::Key_U, Qt::ShiftModifier);
  EXPECT_FALSE(canvas().look().week) << "as it was before the shadows";
  EXPECT_FALSE(canvas().look().day);
}

TEST_F(SunInTheWindow, PlayPassesOverTheNight) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  if (lessMotion()) GTEST_SKIP() << "the system moves nothing by itself";
  SunChoice late = view().choice();
  late.minute = 23 * 60;
  view().choose(late);
  ASSERT_FALSE(view().isLitAt(late.minute));
  clickOn("sun-play");
  ASSERT_TRUE(QTest::qWaitFor([&] { return view().choice().minute != late.minute; }, 5000));
  clickOn("sun-play");
  EXPECT_TRUE(view().isLitAt(view().choice().minute));
}

}  // namespace
}  // namespace tussock::test
