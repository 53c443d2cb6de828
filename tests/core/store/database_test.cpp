// SPDX-License-Identifier: MIT
#include "core/store/database.h"

#include <csignal>
#include <cstdio>

#include <fcntl.h>
#include <gmock/gmock.h>
#include <sched.h>
#include <sqlite3.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;
using Reason = StoreError::Reason;

struct Meaning {
  int code;
  Reason reason;
};

class ErrorOfSqlite : public testing::TestWithParam<Meaning> {};

TEST_P(ErrorOfSqlite, HasItsReasonAndNamesTheFile) {
  const StoreError error =
      storeError(SQLite::Exception("so it says", GetParam().code), "/home/a.yard");
  EXPECT_EQ(error.reason(), GetParam().reason);
  EXPECT_THAT(error.what(), testing::HasSubstr("\"/home/a.yard\""));
  EXPECT_THAT(error.what(), testing::HasSubstr("so it says"));
}

INSTANTIATE_TEST_SUITE_P(Codes, ErrorOfSqlite,
                         testing::Values(Meaning{SQLITE_BUSY, Reason::Locked},
                                         Meaning{SQLITE_LOCKED, Reason::Locked},
                                         Meaning{SQLITE_NOTADB, Reason::NotAYard},
                                         Meaning{SQLITE_CORRUPT, Reason::Damaged},
                                         Meaning{SQLITE_FULL, Reason::Full},
                                         Meaning{SQLITE_READONLY, Reason::ReadOnly},
                                         Meaning{SQLITE_IOERR, Reason::Other},
                                         Meaning{SQLITE_CONSTRAINT, Reason::Other}));

TEST(Connection, TrustsNothingAndWritesThrough) {
  const test::TemporaryFolder folder;
  (void)YardFile::create(folder / "a.yard", Yard{});
  SQLite::Database database = connect(folder / "a.yard", SQLite::OPEN_READWRITE);
  EXPECT_EQ(wholeNumber(database, "PRAGMA synchronous"), 3);  // EXTRA, SQLite's documentation
  EXPECT_EQ(wholeNumber(database, "PRAGMA foreign_keys"), 1);
  EXPECT_EQ(wholeNumber(database, "PRAGMA trusted_schema"), 0);
  EXPECT_EQ(database.execAndGet("PRAGMA journal_mode").getString(), "delete");
  database.exec("PRAGMA writable_schema = ON");  // has no effect in defensive mode
  EXPECT_THROW(database.exec("UPDATE sqlite_schema SET sql = ''"), SQLite::Exception);
}

TEST(Connection, RunsNoTriggerOfTheFile) {
  const test::TemporaryFolder folder;
  YardFile file = YardFile::create(folder / "a.yard", test::twoDrifts());
  test::runSql(file.path(),
               "CREATE TRIGGER t AFTER UPDATE ON settings BEGIN DELETE FROM plant; END");
  file.reload();
  file.commit(test::renameTo(file.yard(), "Hill"));
  EXPECT_EQ(test::askSql(file.path(), "SELECT count(*) FROM plant"), 12);
}

enum Outcome { Right = 0, Wrong = 1, NoSmallDisk = 77 };

// An edit too large for the place, and after it one that fits.
Outcome overfill(YardFile file, Reason expected) {
  const Yard before = file.yard();
  try {
    file.commit(test::renameTo(before, std::string(300000, 'x')));
    return Wrong;
  } catch (const StoreError& error) {
    if (error.reason() != expected || !(file.yard() == before)) return Wrong;
  }
  if (!(YardFile::open(file.path()).yard() == before)) return Wrong;
  file.commit(test::renameTo(before, "Dale"));
  const bool sound = file.verify().empty() && YardFile::open(file.path()).yard() == file.yard();
  return sound ? Right : Wrong;
}

YardFile smallFile(const fs::path& folder) {
  YardFile file = YardFile::create(folder / "a.yard", test::twoDrifts());
  file.commit(test::renameTo(file.yard(), "Hill"));
  return file;
}

// In a mount namespace of its own, which an ordinary user may have along with a user namespace.
Outcome editUntilDiskIsFull(const fs::path& folder) {
  if (::unshare(CLONE_NEWNS) != 0 && ::unshare(CLONE_NEWUSER | CLONE_NEWNS) != 0)
    return NoSmallDisk;
  if (::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 ||
      ::mount("tmpfs", folder.c_str(), "tmpfs", 0, "size=256k") != 0)
    return NoSmallDisk;
  return overfill(smallFile(folder), Reason::Full);
}

// The system refuses to let any file grow past a size (setrlimit(2)): needs no leave, and the file
// is on the disk that people use.
Outcome editUntilFileMayNotGrow(const fs::path& folder) {
  YardFile file = smallFile(folder);
  std::signal(SIGXFSZ, SIG_IGN);
  const rlim_t most = fs::file_size(file.path()) + 65536;
  const rlimit limit{most, most};
  if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return Wrong;
  return overfill(std::move(file), Reason::Other);
}

int outcomeOf(Outcome (*edit)(const fs::path&)) {
  const test::TemporaryFolder folder(test::TemporaryFolder::Place::Disk);
  const pid_t child = ::fork();
  if (child == 0) {
    try {
      ::_exit(edit(folder.path()));
    } catch (const std::exception& error) {
      std::fprintf(stderr, "%s\n", error.what());
      ::_exit(Wrong);
    }
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : Wrong;
}

TEST(FullDisk, AFileThatMayNotGrowStaysAsItWas) {
  EXPECT_EQ(outcomeOf(editUntilFileMayNotGrow), Right);
}

TEST(FullDisk, IsSaidAndTheFileStaysAsItWas) {
  const int outcome = outcomeOf(editUntilDiskIsFull);
  if (outcome == NoSmallDisk) GTEST_SKIP() << "no leave to mount a small disk here";
  EXPECT_EQ(outcome, Right);
}

}  // namespace
}  // namespace tussock
