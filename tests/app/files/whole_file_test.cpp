// SPDX-License-Identifier: MIT
#include "app/files/whole_file.h"

#include <csignal>
#include <functional>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <stdexcept>

#include <gmock/gmock.h>
#include <sys/resource.h>

#include "core/store/yard_file.h"

namespace tussock {
namespace {

using testing::HasSubstr;

QByteArray bytesOf(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return file.readAll();
}

std::string troubleOf(const std::function<void()>& action) {
  try {
    action();
  } catch (const std::runtime_error& problem) {
    return problem.what();
  }
  return {};
}

TEST(WholeFile, ReplacesWhatStoodThereAndLeavesNothingBeside) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("plan.pdf"));
  saveWhole(path, "first");
  saveWhole(path, "second");
  EXPECT_EQ(bytesOf(path), "second");
  EXPECT_EQ(QDir(dir.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

TEST(WholeFile, AYardIsNeverWrittenOver) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("picture.png"));
  (void)YardFile::create(path.toStdString(), Yard{});
  const QByteArray yard = bytesOf(path);
  EXPECT_THAT(troubleOf([&] { saveWhole(path, "x"); }), HasSubstr("picture.png is a yard"));
  EXPECT_EQ(bytesOf(path), yard);
  const QString named = dir.filePath(QStringLiteral("plants.YARD"));
  EXPECT_THAT(troubleOf([&] { saveWhole(named, "x"); }), HasSubstr("the name of a yard file"));
  EXPECT_FALSE(QFile::exists(named));
}

// Another program's database is no yard: its number is not ours.
TEST(WholeFile, AnotherProgramsFileMayBeWrittenOver) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("table.csv"));
  saveWhole(path, QByteArray("SQLite format 3\0", 16) + QByteArray(100, 'x'));
  EXPECT_EQ(whyNotOver(path), QString());
  saveWhole(path, "short");
  EXPECT_EQ(whyNotOver(path), QString());
}

TEST(WholeFile, AFolderThatIsNotThereIsNamed) {
  const std::string trouble = troubleOf([] { saveWhole("/no/such/folder/plan.pdf", "x"); });
  EXPECT_THAT(trouble, HasSubstr("/no/such/folder/plan.pdf cannot be written"));
  EXPECT_THAT(trouble, HasSubstr("Choose a folder that exists"));
}

// No file of this process may grow beyond `bytes` while this lives, as on a disk with no more room:
// setrlimit(2), a write beyond it fails once SIGXFSZ is ignored.
class LittleRoom {
 public:
  explicit LittleRoom(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
    getrlimit(RLIMIT_FSIZE, &before_);
    const rlimit little{bytes, before_.rlim_max};
    setrlimit(RLIMIT_FSIZE, &little);
  }
  ~LittleRoom() {
    setrlimit(RLIMIT_FSIZE, &before_);
    std::signal(SIGXFSZ, handler_);
  }
  LittleRoom(const LittleRoom&) = delete;
  LittleRoom& operator=(const LittleRoom&) = delete;

 private:
  void (*handler_)(int);
  rlimit before_{};
};

TEST(WholeFile, ADiskWithoutRoomIsToldAndTheOldFileStays) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("plan.pdf"));
  saveWhole(path, "old");
  std::string trouble;
  {
    const LittleRoom room(4096);
    trouble = troubleOf([&] { saveWhole(path, QByteArray(1 << 20, 'x')); });
  }
  EXPECT_THAT(trouble, HasSubstr("plan.pdf cannot be written"));
  EXPECT_EQ(bytesOf(path), "old");
  EXPECT_EQ(QDir(dir.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

TEST(WholeFile, APictureIsAPng) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("sun.png"));
  QImage picture(4, 3, QImage::Format_RGB32);
  picture.fill(Qt::darkGreen);
  savePng(path, picture);
  EXPECT_TRUE(bytesOf(path).startsWith("\x89PNG\r\n\x1a\n")) << "PNG 1.2, 3.1: file signature";
  EXPECT_EQ(QImage(path).size(), picture.size());
}

TEST(WholeFile, WhatIsNoPictureLeavesTheOldOneStanding) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("sun.png"));
  saveWhole(path, "old");
  EXPECT_THAT(troubleOf([&] { savePng(path, QImage()); }), HasSubstr("sun.png"));
  EXPECT_EQ(bytesOf(path), "old");
}

}  // namespace
}  // namespace tussock
