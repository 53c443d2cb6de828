// SPDX-License-Identifier: MIT
// Every way in from the start page, by keys and mouse, ending with what is in the file.
#include "app/window/start_page.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

class StartPageTest : public test::WindowTest {
 protected:
  ~StartPageTest() override {
    if (zone_.isNull())
      qunsetenv("TZ");
    else
      qputenv("TZ", zone_);
  }
  [[nodiscard]] StartPage* page() const { return window->findChild<StartPage*>(); }
  void write(const char* field, const QString& text) {
    auto* edit = page()->findChild<QLineEdit*>(QString::fromLatin1(field));
    edit->clear();
    QTest::keyClicks(edit, text);
  }
  void push(const QString& name) {
    auto* button = page()->findChild<QPushButton*>(name);
    ASSERT_TRUE(button && button->isVisible()) << name.toStdString();
    QTest::mouseClick(button, Qt::LeftButton);
  }
  void writePlace(const QString& latitude, const QString& longitude) {
    write("newLatitude", latitude);
    write("newLongitude", longitude);
  }
  [[nodiscard]] QString trouble() const {
    return page()->findChild<QLabel*>(QStringLiteral("newTrouble"))->text();
  }
  // The links to yards opened lately, newest first.
  [[nodiscard]] QStringList recent() const {
    QStringList names;
    for (const auto* link : page()->findChildren<QPushButton*>())
      if (link->property("look") == QLatin1String("link")) names.append(link->text());
    return names;
  }

 private:
  QByteArray zone_ = qgetenv("TZ");
};

TEST_F(StartPageTest, ANewYardHoldsWhatWasWritten) {
  qputenv("TZ", "America/Chicago");
  prompts->yard = path(QStringLiteral("front.yard"));
  write("newName", QStringLiteral("Front garden"));
  writePlace(QStringLiteral("38.4"), QStringLiteral("-86.9"));
  auto* units = page()->findChild<QComboBox*>(QStringLiteral("newUnits"));
  QTest::keyClick(units, Qt::Key_Down);
  push(QStringLiteral("newStart"));
  const Settings settings = inFile().settings;
  EXPECT_EQ(settings.name, "Front garden");
  EXPECT_NEAR(settings.latitude.degrees(), 38.4, 1e-9);
  EXPECT_NEAR(settings.longitude.degrees(), -86.9, 1e-9);
  EXPECT_EQ(settings.units, UnitSystem::Metres);
  EXPECT_EQ(settings.timeZone, "America/Chicago");
  EXPECT_FALSE(page()->isVisible());
  EXPECT_TRUE(window->windowTitle().contains(QStringLiteral("Front garden")));
}

// The computer's zone is no help for a yard on another side of the earth: the margin says so.
TEST_F(StartPageTest, AZoneThatCannotBeThePlacesIsNotTaken) {
  qputenv("TZ", "Europe/Berlin");
  prompts->yard = path(QStringLiteral("far.yard"));
  writePlace(QStringLiteral("38.4"), QStringLiteral("-86.9"));
  push(QStringLiteral("newStart"));
  EXPECT_EQ(inFile().settings.timeZone, "UTC");
  QTest::qWait(0);  // the form of the yard before goes
  const auto* clock = window->findChild<QLabel*>(QStringLiteral("yard-clock"));
  ASSERT_TRUE(clock);
  EXPECT_TRUE(clock->text().contains(QStringLiteral("5.8 h off the sun")))
      << clock->text().toStdString();
}

TEST_F(StartPageTest, APlaceThatIsNoneIsToldAndNoFileMade) {
  prompts->yard = path(QStringLiteral("none.yard"));
  for (const auto& [latitude, longitude, word] :
       {std::tuple{"", "-86.9", "latitude"}, std::tuple{"98", "-86.9", "latitude"},
        std::tuple{"38.4", "west", "longitude"}, std::tuple{"38.4", "-186.9", "longitude"}}) {
    writePlace(QString::fromLatin1(latitude), QString::fromLatin1(longitude));
    QTest::keyClick(page()->findChild<QLineEdit*>(QStringLiteral("newLongitude")), Qt::Key_Return);
    EXPECT_TRUE(trouble().contains(QString::fromLatin1(word))) << trouble().toStdString();
    EXPECT_FALSE(QFile::exists(prompts->yard));
  }
}

TEST_F(StartPageTest, TheExampleIsWrittenAndOpened) {
  prompts->yard = path(QStringLiteral("example.yard"));
  push(QStringLiteral("startExample"));
  EXPECT_EQ(inFile().beds.size(), 3u);
  EXPECT_EQ(document.yard(), inFile());
}

TEST_F(StartPageTest, AYardIsOpenedFromItsFile) {
  const Yard made = test::YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build();
  prompts->yard = path(QStringLiteral("kept.yard"));
  (void)YardFile::create(prompts->yard.toStdString(), made);
  push(QStringLiteral("startOpen"));
  EXPECT_EQ(yard(), made);
}

TEST_F(StartPageTest, ThoseOpenedLatelyAreAClickAwayTheNewestFirst) {
  for (const char* name : {"first.yard", "second.yard"}) {
    prompts->yard = path(QString::fromLatin1(name));
    (void)YardFile::create(prompts->yard.toStdString(), test::YardBuilder().build());
    trigger("actionOpen");
  }
  trigger("actionClose");
  EXPECT_EQ(recent(), QStringList({QStringLiteral("second"), QStringLiteral("first")}));
  for (auto* link : page()->findChildren<QPushButton*>())
    if (link->text() == QLatin1String("first")) {
      QTest::mouseClick(link, Qt::LeftButton);
      break;
    }
  EXPECT_EQ(document.path(), path(QStringLiteral("first.yard")));
  trigger("actionClose");
  EXPECT_EQ(recent(), QStringList({QStringLiteral("first"), QStringLiteral("second")}));
}

TEST_F(StartPageTest, AFileThatIsGoneIsNoLongerOffered) {
  prompts->yard = path(QStringLiteral("gone.yard"));
  (void)YardFile::create(prompts->yard.toStdString(), test::YardBuilder().build());
  trigger("actionOpen");
  trigger("actionClose");
  ASSERT_TRUE(recent().contains(QStringLiteral("gone")));
  prompts->yard = path(QStringLiteral("other.yard"));
  (void)YardFile::create(prompts->yard.toStdString(), test::YardBuilder().build());
  trigger("actionOpen");
  ASSERT_TRUE(QFile::remove(path(QStringLiteral("gone.yard"))));
  trigger("actionClose");
  EXPECT_EQ(recent(), QStringList({QStringLiteral("other")}));
}

}  // namespace
}  // namespace tussock
