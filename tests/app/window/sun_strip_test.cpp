// SPDX-License-Identifier: MIT
// The sun in the window, by keys and mouse: the hours, and what is said of them.
#include "app/panels/sun_strip.h"

#include <QComboBox>

#include "app/panels/field_text.h"
#include "app/panels/sun_words.h"
#include "app/tools/handles.h"
#include "core/sun/tree_growth.h"
#include "tests/app/window/sun_window.h"

namespace tussock::test {
namespace {

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

TEST_F(SunInTheWindow, KeysGoToThePlanOnceADateIsGiven) {
  startShaded();
  key(Qt::Key_U, Qt::ShiftModifier);
  typeDate(QStringLiteral("2026-07-1x"));
  EXPECT_FALSE(canvas().hasFocus()) << "it is to be mended";
  typeDate(QStringLiteral("2026-07-10"));
  EXPECT_TRUE(canvas().hasFocus());
  key(Qt::Key_U);
  EXPECT_EQ(view().choice().look, SunLook::Hours);
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

// The smallest screens that laptops have had for long (common practice).
TEST_F(SunInTheWindow, TheChoicesTakeOneLineOnASmallScreen) {
  startShaded();
  window->resize(1280, 800);
  for (const Qt::KeyboardModifiers look : {Qt::NoModifier, Qt::ShiftModifier}) {
    key(Qt::Key_U, look);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->width() == 1280 && strip()->isVisible(); }));
    QTest::qWait(0);
    const auto middle = [&](const char* name) {
      auto* button = part<QPushButton>(name);
      return button->mapTo(strip(), button->rect().center()).y();
    };
    EXPECT_NEAR(middle("sun-years-15"), middle("sun-hours"), 4);
  }
  window->resize(1024, 720);
  ASSERT_TRUE(QTest::qWaitFor([&] { return canvas().width() < 800; }));
  QTest::qWait(0);
  EXPECT_LT(strip()->height() * 2, canvas().height()) << "the plan keeps most of the ground";
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
