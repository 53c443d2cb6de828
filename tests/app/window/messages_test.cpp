// SPDX-License-Identifier: MIT
// What the window says when a file cannot be used, and how long it says it.
#include <csignal>
#include <QFile>
#include <QLabel>

#include <gmock/gmock.h>
#include <sqlite3.h>
#include <sys/resource.h>

#include "app/window/main_window.h"
#include "core/edit/draft.h"
#include "core/store/yard_file.h"
#include "tests/app/window/window_fixture.h"

namespace tussock {
namespace {

using test::YardBuilder;

class MessagesTest : public test::WindowTest {
 protected:
  [[nodiscard]] MessageBar* bar() const { return window->findChild<MessageBar*>(); }
  [[nodiscard]] QByteArray bytesOf(const QString& name) const {
    QFile file(path(name));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }
  void write(const QString& name, const QByteArray& bytes) const {
    QFile file(path(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  // Opens the file through the window with no yard open, and expects to be told why not.
  void expectRefused(const QString& name) {
    const QByteArray before = bytesOf(name);
    document.close();
    prompts->yard = path(name);
    trigger("actionOpen");
    EXPECT_TRUE(bar()->isVisible()) << name.toStdString();
    EXPECT_TRUE(bar()->words().contains(name)) << bar()->words().toStdString();
    EXPECT_FALSE(document.isOpen());
    EXPECT_EQ(bytesOf(name), before);
  }
  void endABedAfterTwoCorners() {
    start();
    trigger("toolBed");
    click({0.0, 0.0}, Qt::ShiftModifier);
    click({2.0, 0.0}, Qt::ShiftModifier);
    key(Qt::Key_Return);
    ASSERT_TRUE(bar()->isVisible()) << "two corners make no bed";
  }
  // Sets SQLite's user_version of a whole yard file.
  void makeNewer(const QString& name) const {
    sqlite3* file = nullptr;
    ASSERT_EQ(sqlite3_open(path(name).toUtf8().constData(), &file), SQLITE_OK);
    sqlite3_exec(file, "PRAGMA user_version = 99", nullptr, nullptr, nullptr);
    sqlite3_close(file);
  }
};

TEST_F(MessagesTest, AFileThatCannotBeOpenedIsToldOnTheStartPage) {
  start();
  write(QStringLiteral("notes.yard"), "a shopping list");
  expectRefused(QStringLiteral("notes.yard"));
  (void)YardFile::create(path(QStringLiteral("torn.yard")).toStdString(), YardBuilder().build());
  write(QStringLiteral("torn.yard"), bytesOf(QStringLiteral("torn.yard")).left(5000));
  expectRefused(QStringLiteral("torn.yard"));
  (void)YardFile::create(path(QStringLiteral("next.yard")).toStdString(), YardBuilder().build());
  makeNewer(QStringLiteral("next.yard"));
  expectRefused(QStringLiteral("next.yard"));
}

TEST_F(MessagesTest, ACopyIsAYardOfItsOwnAndNeverReplacesOne) {
  start(YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  prompts->yard = path(QStringLiteral("copy.yard"));
  trigger("actionSaveCopy");
  EXPECT_FALSE(bar()->isVisible());
  EXPECT_EQ(YardFile::open(prompts->yard.toStdString()).yard(), yard());
  const QByteArray before = bytesOf(QStringLiteral("copy.yard"));
  trigger("actionSaveCopy");
  EXPECT_TRUE(bar()->words().contains(QStringLiteral("copy.yard")));
  EXPECT_EQ(bytesOf(QStringLiteral("copy.yard")), before);
}

TEST_F(MessagesTest, AnotherProgramsChangeStaysToldAfterOnesOwnEdit) {
  start();
  {
    YardFile other = YardFile::open(document.path().toStdString());
    Draft draft(other.yard());
    Settings settings = other.yard().settings;
    settings.notes = "from elsewhere";
    draft.put(settings);
    other.commit(draft.finish("Change notes"));
  }
  Draft draft(document.yard());
  WaterPoint tap;
  tap.id = document.ids().take<WaterPoint>();
  draft.put(tap);
  EXPECT_TRUE(document.commit(draft.finish("Mark water point")));
  EXPECT_TRUE(bar()->isVisible());
  EXPECT_TRUE(bar()->words().contains(QStringLiteral("Another program")));
  EXPECT_EQ(inFile().settings.notes, "from elsewhere");
  EXPECT_EQ(inFile().waterPoints.size(), 1u);
}

TEST_F(MessagesTest, AFailedEditIsPutAwayByTheNextThatIsMade) {
  start();
  emit document.editFailed(QStringLiteral("The disk is full."));
  EXPECT_TRUE(bar()->isVisible());
  Draft draft(document.yard());
  WaterPoint tap;
  tap.id = document.ids().take<WaterPoint>();
  draft.put(tap);
  EXPECT_TRUE(document.commit(draft.finish("Mark water point")));
  EXPECT_FALSE(bar()->isVisible());
}

TEST_F(MessagesTest, WhatAToolCouldNotDoIsPutAwayByTheNextEdit) {
  endABedAfterTwoCorners();
  click({2.0, 2.0}, Qt::ShiftModifier);
  key(Qt::Key_Return);
  EXPECT_EQ(inFile().beds.size(), 1u);
  EXPECT_FALSE(bar()->isVisible());
}

TEST_F(MessagesTest, WhatAToolCouldNotDoIsPutAwayByEscape) {
  endABedAfterTwoCorners();
  key(Qt::Key_Escape);
  EXPECT_FALSE(bar()->isVisible());
  EXPECT_EQ(inFile().beds.size(), 0u);
}

TEST_F(MessagesTest, ARefusedCornerIsPutAwayByEscape) {
  start(YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 4, 0 4, 0 0))").build());
  trigger("actionFit");
  document.select({refTo(yard().beds.begin()->id)});
  drag({6.0, 4.0}, {3.0, -2.0});
  ASSERT_TRUE(bar()->isVisible()) << "the outline would cross itself";
  key(Qt::Key_Escape);
  EXPECT_FALSE(bar()->isVisible());
  EXPECT_EQ(inFile().beds.begin()->outline.outer.size(), 4u);
}

TEST_F(MessagesTest, NothingMovesForAMessageAndAnotherToolPutsItAway) {
  start(YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  trigger("actionFit");
  trigger("toolPhoto");
  const QSize before = canvas().size();
  const SceneMapping mapping = canvas().mapping();
  click({3.0, 1.0});
  QTest::qWait(20);
  ASSERT_TRUE(bar()->isVisible()) << "there is no photo";
  EXPECT_EQ(canvas().size(), before);
  EXPECT_EQ(canvas().mapping(), mapping);
  EXPECT_TRUE(canvas().rect().contains(bar()->geometry()));
  const auto* ways = window->findChild<QWidget*>(QStringLiteral("waysBar"));
  EXPECT_FALSE(bar()->geometry().intersects(ways->geometry()));
  const auto* words = bar()->findChild<QLabel*>(QStringLiteral("messageWords"));
  EXPECT_GE(words->height(), words->heightForWidth(words->width())) << "the words are all there";
  trigger("toolBed");
  EXPECT_FALSE(bar()->isVisible());
  EXPECT_EQ(canvas().size(), before);
}

TEST_F(MessagesTest, ALongMessageIsAllThereInANarrowWindow) {
  start();
  window->resize(1024, 700);
  QTest::qWait(20);
  emit canvas().troubled(QStringLiteral("A very long file name goes on and on. ").repeated(12));
  QTest::qWait(20);
  EXPECT_TRUE(canvas().rect().contains(bar()->geometry()));
  const auto* words = bar()->findChild<QLabel*>(QStringLiteral("messageWords"));
  EXPECT_GE(words->height(), words->heightForWidth(words->width()));
}

// While one lives no file may be written to (setrlimit(2)), as on a disk that is full.
class NothingCanBeWritten {
 public:
  NothingCanBeWritten() {
    before_ = std::signal(SIGXFSZ, SIG_IGN);
    ::getrlimit(RLIMIT_FSIZE, &limit_);
    const rlimit none{0, limit_.rlim_max};
    EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &none), 0);
  }
  ~NothingCanBeWritten() {
    ::setrlimit(RLIMIT_FSIZE, &limit_);
    std::signal(SIGXFSZ, before_);
  }
  NothingCanBeWritten(const NothingCanBeWritten&) = delete;
  NothingCanBeWritten& operator=(const NothingCanBeWritten&) = delete;

 private:
  rlimit limit_{};
  void (*before_)(int) = nullptr;
};

TEST_F(MessagesTest, AnEditThatCannotBeWrittenIsToldAndNotShownAsDone) {
  start(YardBuilder().bed("Walk", "POLYGON((0 0, 6 0, 6 2, 0 2, 0 0))").build());
  const Yard before = yard();
  QString said;
  {
    const NothingCanBeWritten full;
    trigger("toolWater");
    click({3.0, 3.0});
    said = bar()->words();
    EXPECT_TRUE(bar()->isVisible());
  }
  EXPECT_TRUE(said.contains(QStringLiteral("test.yard"))) << said.toStdString();
  EXPECT_EQ(yard(), before);
  EXPECT_EQ(inFile(), before);
  EXPECT_TRUE(undoLabel().isEmpty());
  EXPECT_TRUE(canvas().scene().at({3.0, 3.0}, 0.3).empty()) << "nothing of it is on the canvas";
  // Once there is room again the same edit is made.
  trigger("toolWater");
  click({3.0, 3.0});
  EXPECT_EQ(inFile().waterPoints.size(), 1u);
}

}  // namespace
}  // namespace tussock
