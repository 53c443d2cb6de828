// SPDX-License-Identifier: MIT
// The sun in the window, by keys and mouse.
#include "app/panels/sun_strip.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/canvas/sun_compass.h"
#include "app/look/motion.h"
#include "app/panels/day_ribbon.h"
#include "app/panels/field_text.h"
#include "app/panels/sun_words.h"
#include "app/panels/year_dial.h"
#include "app/panels/year_ruler.h"
#include "app/tools/handles.h"
#include "core/sun/tree_growth.h"
#include "tests/app/window/window_fixture.h"

namespace tussock::test {
namespace {

class SunInTheWindow : public WindowTest {
 protected:
  // A bed north of a tree that grows.
  void startShaded() {
    YardBuilder builder;
    builder.bed("Walk", "POLYGON((0 0,6 0,6 3,0 3,0 0))").tree("Oak", {3.0, -2.0}, 0.3);
    Yard yard = builder.build();
    Tree oak = *yard.trees.begin();
    oak.growth = Length::centimetres(40);
    yard.trees = yard.trees.with(oak);
    start(yard);
    settle();
  }
  void settle() const { canvas().sunView().waitForMap(); }
  [[nodiscard]] SunView& view() const { return canvas().sunView(); }
  template <class W>
  W* part(const char* name) const {
    auto* found = window->findChild<W*>(QLatin1String(name));
    EXPECT_TRUE(found) << name;
    return found;
  }
  [[nodiscard]] QWidget* strip() const { return part<QWidget>("sun-strip"); }
  [[nodiscard]] QString words() const { return part<QLabel>("sun-words")->text(); }
  void clickOn(const char* button) const {
    QTest::mouseClick(part<QPushButton>(button), Qt::LeftButton);
  }
  [[nodiscard]] bool checked(const char* action) const {
    return part<QAction>(action)->isChecked();
  }
  void typeDate(const QString& text) const {
    auto* date = part<QLineEdit>("sun-date");
    date->setFocus();
    date->selectAll();
    QTest::keyClicks(date, text);
    QTest::keyClick(date, Qt::Key_Return);
  }
};

TEST_F(SunInTheWindow, UShowsTheHoursAndPutsThemAway) {
  startShaded();
  EXPECT_FALSE(strip()->isVisible());
  key(Qt::Key_U);
  EXPECT_TRUE(strip()->isVisible());
  EXPECT_TRUE(checked("actionSun"));
  EXPECT_TRUE(words().contains(QStringLiteral("Central Michigan University"))) << "whose limits";
  key(Qt::Key_U, Qt::ShiftModifier);
  EXPECT_EQ(view().choice().look, SunLook::Shadows);
  EXPECT_FALSE(checked("actionSun"));
  EXPECT_TRUE(checked("actionShadows"));
  key(Qt::Key_U, Qt::ShiftModifier);
  EXPECT_FALSE(strip()->isVisible());
  EXPECT_FALSE(checked("actionShadows"));
}

TEST_F(SunInTheWindow, ThePointerReadsTheHoursInWords) {
  startShaded();
  key(Qt::Key_U);
  settle();
  const Point at{3.0, 1.0};
  moveTo(at);
  const auto year = view().map()->yearAt(at);
  ASSERT_TRUE(year);
  const auto h = [](double hours) { return QString::number(hours, 'f', 1); };
  const HourFigures figures = hourFigures(year->mean);
  EXPECT_TRUE(words().startsWith(
      QStringLiteral("Growing season: %1 h of sun, %2 before noon and %3 after; ")
          .arg(h(year->mean.total()), figures.before, figures.after)))
      << words().toStdString();
  EXPECT_TRUE(words().contains(QStringLiteral("June ")) ||
              words().contains(QStringLiteral("July ")));
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&canvas(), &leave);
  EXPECT_TRUE(words().startsWith(QStringLiteral("Limits")));
}

TEST_F(SunInTheWindow, AMonthIsChosenFromTheList) {
  startShaded();
  key(Qt::Key_U);
  settle();
  auto* spans = part<QComboBox>("sun-span");
  ASSERT_EQ(spans->count(), 9) << "season, April to October, worst month";
  spans->setFocus();
  QTest::keyClick(spans, Qt::Key_End);
  EXPECT_EQ(view().choice().span, SunSpan::WorstMonth);
  QTest::keyClick(spans, Qt::Key_Up);
  EXPECT_EQ(view().choice().span, SunSpan::Month);
  EXPECT_EQ(view().choice().month, std::chrono::October);
}

// Of the growing season from 20 April to 18 October, the first and the last month are only parts.
TEST_F(SunInTheWindow, WordsTellTheSpanThatTheMapShows) {
  startShaded();
  key(Qt::Key_U);
  settle();
  const Point at{3.0, 1.0};
  moveTo(at);
  const auto year = view().map()->yearAt(at);
  auto* spans = part<QComboBox>("sun-span");
  EXPECT_EQ(spans->itemText(1), QStringLiteral("20–30 April"));
  EXPECT_EQ(spans->itemText(2), QStringLiteral("May"));
  spans->setFocus();
  QTest::keyClick(spans, Qt::Key_Home);
  QTest::keyClick(spans, Qt::Key_Down);
  const auto h = [](double hours) { return QString::number(hours, 'f', 1); };
  EXPECT_TRUE(words().startsWith(
      QStringLiteral("20–30 April: %1 h of sun").arg(h(year->months[0].hours.total()))))
      << words().toStdString();
  EXPECT_TRUE(
      part<QLabel>("statusPlace")->text().endsWith(QStringLiteral("h of sun here, 20–30 April")));
  QTest::keyClick(spans, Qt::Key_End);
  EXPECT_TRUE(words().startsWith(QStringLiteral("Worst month here, ")));
  EXPECT_TRUE(words().contains(QStringLiteral(": %1 h of sun").arg(h(*view().grid().hoursAt(at)))))
      << words().toStdString() << ": what the map shows there";
  EXPECT_TRUE(part<QLabel>("statusPlace")->text().contains(h(*view().grid().hoursAt(at))));
}

TEST_F(SunInTheWindow, TheReadingFollowsTheMapUnderAPointerThatRests) {
  startShaded();
  key(Qt::Key_U);
  settle();
  const Point trunk{3.0, -2.0};
  const auto place = [&] { return part<QLabel>("statusPlace")->text(); };
  press(trunk);
  moveTo({2.0, -2.0});
  moveTo({1.1, -2.1});  // the tree is under the pointer, and the pointer rests
  settle();
  EXPECT_EQ(words(), QStringLiteral("On the trunk of a tree"));
  EXPECT_TRUE(place().endsWith(QStringLiteral("on the trunk of a tree"))) << place().toStdString();
  key(Qt::Key_Escape);
  settle();
  QTest::qWait(0);
  const auto open = view().map()->hoursAt({1.1, -2.1});
  EXPECT_TRUE(words().startsWith(
      QStringLiteral("Growing season: %1 h of sun").arg(open->total(), 0, 'f', 1)))
      << words().toStdString();
  EXPECT_TRUE(place().contains(QStringLiteral("%1 h of sun here").arg(open->total(), 0, 'f', 1)));
  moveTo({3.1, 0.6});
  const QString before = words();
  clickOn("sun-years-15");
  settle();
  EXPECT_NE(words(), before) << "other trees, other hours";
  EXPECT_TRUE(words().contains(
      QStringLiteral("%1 h of sun").arg(view().map()->hoursAt({3.1, 0.6})->total(), 0, 'f', 1)));
}

TEST_F(SunInTheWindow, NoHoursAreToldUnderARoof) {
  start(YardBuilder()
            .bed("Walk", "POLYGON((0 0,6 0,6 3,0 3,0 0))")
            .building("Shed", "POLYGON((0 4, 4 4, 4 7, 0 7, 0 4))")
            .build());
  settle();
  key(Qt::Key_U);
  settle();
  moveTo({2.0, 5.5});
  EXPECT_EQ(words(), QStringLiteral("Under a roof"));
  EXPECT_TRUE(part<QLabel>("statusPlace")->text().endsWith(QStringLiteral("under a roof")));
}

// Whatever is rounded, what is told adds up and is off by less than a tenth.
TEST(SunWords, HoursBeforeAndAfterNoonAddUp) {
  for (double before = 0.0; before < 7.0; before += 0.013)
    for (double after = 0.0; after < 7.0; after += 0.37) {
      const HourFigures figures = hourFigures({before, after});
      ASSERT_NEAR(figures.before.toDouble() + figures.after.toDouble(), figures.total.toDouble(),
                  1e-9)
          << before << " and " << after;
      ASSERT_NEAR(figures.before.toDouble(), before, 0.1001);
      ASSERT_NEAR(figures.after.toDouble(), after, 0.1001);
      ASSERT_NEAR(figures.total.toDouble(), before + after, 0.0501);
    }
}

TEST(SunWords, MonthsTellWhichOfTheirDaysCount) {
  using namespace std::chrono;
  const auto words = [](month each, MonthDay first, MonthDay last) {
    return monthWords(each, GrowingSeason{first, last, false}).toStdString();
  };
  EXPECT_EQ(words(April, April / 1, October / 31), "April");
  EXPECT_EQ(words(October, April / 20, October / 18), "1–18 October");
  EXPECT_EQ(words(April, April / 20, April / 28), "20–28 April");
  EXPECT_EQ(words(May, May / 20, May / 3), "1–3 and 20–31 May") << "over the new year";
  EXPECT_EQ(words(February, October / 1, February / 29), "February");
}

// On 20 March at 42.3 degrees north, 83 west the sun's middle comes up some 5 minutes after its rim
// is seen: 0.833 degrees at 15 degrees an hour times the cosine of the latitude.
TEST(SunWords, TheSunOnTheHorizonIsToldApart) {
  Settings settings;
  settings.latitude = Angle::degrees(42.3);
  settings.longitude = Angle::degrees(-83.0);
  settings.timeZone = "America/Detroit";
  const CivilDay day(Date(std::chrono::year(2027), std::chrono::March, std::chrono::day(20)),
                     settings);
  const Daylight seen = daylight(day.date(), settings.latitude, settings.longitude);
  const int sunrise = day.minuteOf(*seen.sunrise), sunset = day.minuteOf(*seen.sunset);
  EXPECT_EQ(horizonWords(day, sunrise - 1, settings), "");
  EXPECT_TRUE(horizonWords(day, sunrise + 2, settings).contains("until its middle is up"));
  EXPECT_EQ(horizonWords(day, sunrise + 6, settings), "");
  EXPECT_EQ(horizonWords(day, sunset - 6, settings), "");
  EXPECT_TRUE(horizonWords(day, sunset - 1, settings).contains("its middle went down"));
  EXPECT_EQ(horizonWords(day, sunset + 2, settings), "");
}

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

TEST_F(SunInTheWindow, TheMarginFollowsAHeightThatIsDragged) {
  startShaded();
  click({3.0, -2.0});
  auto* height = part<QLineEdit>("tree-height");
  const QString before = height->text();
  Handles handles(canvas());
  QPoint arrows;
  for (const Handles::Handle& handle : handles.all())
    if (handle.kind == Handles::Kind::Height) arrows = handle.at.toPoint();
  EXPECT_GE(arrows.y(), 10) << "in sight, however high the canvas is";
  QTest::mousePress(&canvas(), Qt::LeftButton, {}, arrows);
  QTest::mouseMove(&canvas(), arrows + QPoint(0, 30));
  QTest::mouseMove(&canvas(), arrows + QPoint(0, 60));
  EXPECT_NE(height->text(), before);
  EXPECT_EQ(yard().trees.begin()->height, inFile().trees.begin()->height)
      << "nothing is written yet";
  const QString during = height->text();
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, arrows + QPoint(0, 60));
  EXPECT_EQ(height->text(), during);
  EXPECT_EQ(lengthText(inFile().trees.begin()->height, UnitSystem::Metres), during);
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

TEST_F(SunInTheWindow, TreesGrowOnInTheMap) {
  startShaded();
  key(Qt::Key_U);
  settle();
  const double now = view().map()->hoursAt({3.0, 0.5})->total();
  clickOn("sun-years-15");
  settle();
  const Yard later = grownBy(yard(), 15.0);
  const auto map = computeSunMap(later, seasonRequest(later));
  EXPECT_EQ(view().map()->hoursAt({3.0, 0.5})->total(), map->hoursAt({3.0, 0.5})->total());
  EXPECT_NE(view().map()->hoursAt({3.0, 0.5})->total(), now);
}

TEST_F(SunInTheWindow, DraggingATreeCarriesItsShadeAlong) {
  startShaded();
  key(Qt::Key_U);
  settle();
  const Point north{1.0, 0.5};
  press({3.0, -2.0});
  moveTo({2.0, -2.0});
  moveTo({1.0, -2.0});
  EXPECT_TRUE(view().previewing());
  settle();
  Yard there = yard();
  Tree oak = *there.trees.begin();
  oak.at.x -= 2.0;
  there.trees = there.trees.with(oak);
  const auto expected = computeSunMap(there, previewRequest(yard()));
  EXPECT_NEAR(view().map()->hoursAt(north)->total(), expected->hoursAt(north)->total(), 0.05);
  key(Qt::Key_Escape);
  EXPECT_FALSE(view().previewing());
  settle();
  EXPECT_EQ(view().map(), document.sunMap());
}

TEST_F(SunInTheWindow, TheStripStaysWithinANarrowWindow) {
  startShaded();
  key(Qt::Key_U);
  const int high = strip()->height();
  window->resize(760, 700);
  QTest::qWait(0);
  EXPECT_GE(strip()->x(), 0);
  EXPECT_LE(strip()->geometry().right(), canvas().width());
  EXPECT_GT(strip()->height(), high) << "wrapped";
  for (const char* name : {"sun-hours", "sun-shadows", "sun-years-15"}) {
    auto* button = part<QPushButton>(name);
    const QPoint end = button->mapTo(strip(), button->rect().bottomRight());
    EXPECT_TRUE(strip()->rect().contains(end)) << name;
  }
}

}  // namespace
}  // namespace tussock::test
