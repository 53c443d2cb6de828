// SPDX-License-Identifier: MIT
// What happens when a path is opened that is not a sound yard file, or may not be written.
#include "core/store/opening.h"

#include <functional>

#include <gmock/gmock.h>
#include <grp.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/store/schema.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;
using Reason = StoreError::Reason;
using testing::HasSubstr;
using testing::IsEmpty;

struct Refusal {
  Reason reason = Reason::Other;
  std::string message = "opened";
};

Refusal refusalOf(const std::function<void()>& act) {
  try {
    act();
  } catch (const StoreError& error) {
    return {error.reason(), error.what()};
  }
  return {};
}

Refusal refusalOf(const fs::path& path, YardFile::Access access = YardFile::Access::ReadWrite) {
  return refusalOf([&] { (void)YardFile::open(path, access); });
}

class Opening : public testing::Test {
 protected:
  Opening() { (void)YardFile::create(path_, test::twoDrifts()); }
  void expectRefused(Reason reason, const std::string& words) const {
    const std::string before = fs::is_regular_file(path_) ? test::bytesOf(path_) : "";
    for (const auto access : {YardFile::Access::ReadWrite, YardFile::Access::ReadOnly}) {
      const Refusal refusal = refusalOf(path_, access);
      EXPECT_EQ(refusal.reason, reason) << refusal.message;
      EXPECT_THAT(refusal.message, HasSubstr(words));
      EXPECT_THAT(refusal.message, HasSubstr(path_.string()));
    }
    if (fs::is_regular_file(path_)) {
      EXPECT_EQ(test::bytesOf(path_), before);
    }
  }

  test::TemporaryFolder folder_{test::TemporaryFolder::Place::Disk};
  fs::path path_ = folder_ / "a.yard";
};

TEST_F(Opening, SaysWhenThereIsNothing) {
  fs::remove(path_);
  expectRefused(Reason::NotFound, "is not there");
}

TEST_F(Opening, SaysWhenItIsAFolder) {
  fs::remove(path_);
  fs::create_directory(path_);
  expectRefused(Reason::NotAYard, "is a folder");
}

TEST_F(Opening, SaysWhenItIsNoOrdinaryFile) {
  const Refusal refusal = refusalOf("/dev/null");
  EXPECT_EQ(refusal.reason, Reason::NotAYard);
}

TEST_F(Opening, SaysWhenItIsEmpty) {
  test::writeBytes(path_, "");
  expectRefused(Reason::NotAYard, "is empty");
}

TEST_F(Opening, SaysWhenItIsSomethingElse) {
  test::writeBytes(path_, "%PDF-1.7" + std::string(4000, 'x'));
  expectRefused(Reason::NotAYard, "is not a yard file");
}

TEST_F(Opening, SaysWhenItIsAnotherProgramsDatabase) {
  test::runSql(path_, "PRAGMA application_id = 252006673");
  expectRefused(Reason::NotAYard, "another program's database");
}

TEST_F(Opening, SaysWhenANewerTussockWroteIt) {
  test::runSql(path_, "PRAGMA user_version = " + std::to_string(kSchemaVersion + 1));
  expectRefused(Reason::Newer, "newer Tussock");
}

TEST_F(Opening, SaysWhenTheVersionIsNone) {
  test::runSql(path_, "PRAGMA user_version = 0");
  expectRefused(Reason::Damaged, "damaged");
}

TEST_F(Opening, SaysWhenItIsCutShort) {
  const std::string whole = test::bytesOf(path_);
  for (const std::size_t size : {std::size_t{16}, std::size_t{100}, std::size_t{511},
                                 std::size_t{4096}, whole.size() / 2, whole.size() - 1}) {
    SCOPED_TRACE(size);
    test::writeBytes(path_, whole.substr(0, size));
    expectRefused(Reason::Damaged, "damaged");
  }
}

TEST_F(Opening, SaysWhenAPageIsOverwritten) {
  std::string bytes = test::bytesOf(path_);
  bytes.replace(200, bytes.size() - 200, bytes.size() - 200, '\x5a');
  test::writeBytes(path_, bytes);
  expectRefused(Reason::Damaged, "damaged");
}

TEST_F(Opening, SaysWhichFieldCannotBeRead) {
  test::runSql(path_, "UPDATE bed SET outline_wkt = 'POLYGON ((0 0'");
  expectRefused(Reason::Damaged, "bed 2, outline_wkt");
}

TEST_F(Opening, SaysWhereTextIsNotUtf8) {
  const std::string sound = test::bytesOf(path_);
  for (const auto& [column, place] :
       {std::pair("UPDATE settings SET name", "settings 1, name: the text is not UTF-8"),
        {"UPDATE bed SET name", "bed 2, name: the text is not UTF-8"},
        {"UPDATE drift SET species", "drift 3, species: the text is not UTF-8"},
        {"UPDATE bed SET outline_wkt", "bed 2, outline_wkt: the text is not UTF-8"},
        {"UPDATE settings SET thresholds_json",
         "settings 1, thresholds_json: the text is not UTF-8"}}) {
    test::writeBytes(path_, sound);
    test::runSql(path_, std::string(column) + " = CAST(x'41ff42' AS TEXT)");
    expectRefused(Reason::Damaged, place);
  }
}

TEST_F(Opening, SaysWhenAStepsLabelIsNotUtf8) {
  {
    YardFile file = YardFile::open(path_);
    file.commit(test::renameTo(file.yard(), "Hill"));
  }
  test::runSql(path_, "UPDATE history SET label = CAST(x'ff' AS TEXT)");
  expectRefused(Reason::Damaged, "history 1: the text is not UTF-8");
}

TEST_F(Opening, SaysInPlainWordsWhenAListCannotBeRead) {
  test::runSql(path_, "UPDATE settings SET thresholds_json = '[{\"threshold\":'");
  expectRefused(Reason::Damaged, "settings 1, thresholds_json: Not JSON");
  EXPECT_THAT(refusalOf(path_).message, testing::Not(HasSubstr("exception")));
}

TEST_F(Opening, SaysWhenATableIsMissing) {
  test::runSql(path_, "DROP TABLE tree");
  expectRefused(Reason::Damaged, "tree");
}

TEST_F(Opening, SaysWhenAPlantIsInNoDrift) {
  test::runSql(path_, "UPDATE plant SET drift_id = 77 WHERE id = 4");
  expectRefused(Reason::Damaged, "plant 4 is in no drift");
}

TEST_F(Opening, LeavesEveryByteAsItWas) {
  const std::string before = test::bytesOf(path_);
  for (const auto access : {YardFile::Access::ReadWrite, YardFile::Access::ReadOnly}) {
    const YardFile file = YardFile::open(path_, access);
    EXPECT_FALSE(file.changedOutside());
    EXPECT_THAT(file.verify(), IsEmpty());
  }
  EXPECT_EQ(test::bytesOf(path_), before);
  EXPECT_EQ(std::distance(fs::directory_iterator(folder_.path()), {}), 1);
}

TEST_F(Opening, SaysWhenAnotherProgramIsWriting) {
  SQLite::Database other(path_.string(), SQLite::OPEN_READWRITE);
  other.exec("BEGIN EXCLUSIVE");
  const Refusal refusal = refusalOf(path_);
  EXPECT_EQ(refusal.reason, Reason::Locked) << refusal.message;
  EXPECT_THAT(refusal.message, HasSubstr("another program"));
}

TEST_F(Opening, ForLookingOnlyRefusesEveryWrite) {
  YardFile file = YardFile::open(path_, YardFile::Access::ReadOnly);
  EXPECT_EQ(file.access(), YardFile::Access::ReadOnly);
  const Yard before = file.yard();
  const std::vector<std::function<void()>> writes{
      [&] { file.commit(test::renameTo(before, "Hill")); }, [&] { file.undo(); },
      [&] { file.redo(); }, [&] { file.forgetHistory(); }};
  for (const auto& write : writes) EXPECT_EQ(refusalOf(write).reason, Reason::ReadOnly);
  EXPECT_EQ(file.yard(), before);
}

// Half an edit with its journal beside it, as a power cut leaves them.
void leaveHalfWritten(const fs::path& from, const fs::path& to) {
  SQLite::Database database(from.string(), SQLite::OPEN_READWRITE);
  database.exec(
      "PRAGMA cache_size = 1; BEGIN IMMEDIATE; UPDATE plant SET at_x_m = 99;"
      "UPDATE bed SET name = replace(hex(zeroblob(20000)), '0', 'x')");
  fs::copy_file(from, to);
  fs::copy_file(from.string() + "-journal", to.string() + "-journal");
  database.exec("ROLLBACK");
}

TEST_F(Opening, TakesBackWhatAPowerCutLeftHalfWritten) {
  const fs::path torn = folder_ / "torn.yard";
  leaveHalfWritten(path_, torn);
  ASSERT_NE(test::bytesOf(torn), test::bytesOf(path_));
  const YardFile file = YardFile::open(torn);
  EXPECT_EQ(file.yard(), test::twoDrifts());
  EXPECT_THAT(file.verify(), IsEmpty());
  EXPECT_EQ(test::bytesOf(torn), test::bytesOf(path_));
}

TEST_F(Opening, ForLookingOnlyLeavesAHalfWrittenFileAlone) {
  const fs::path torn = folder_ / "torn.yard";
  leaveHalfWritten(path_, torn);
  const std::string before = test::bytesOf(torn);
  const Refusal refusal = refusalOf(torn, YardFile::Access::ReadOnly);
  EXPECT_EQ(refusal.reason, Reason::ReadOnly) << refusal.message;
  EXPECT_THAT(refusal.message, HasSubstr("Open it once for writing"));
  EXPECT_EQ(test::bytesOf(torn), before);
}

// The superuser may write anything, so the test gives that up in a process of its own.
bool holdsForOrdinaryUser(const std::function<bool()>& test) {
  const pid_t child = ::fork();
  if (child == 0) {
    constexpr unsigned kNobody = 65534;
    if (::getuid() == 0 &&
        (::setgroups(0, nullptr) != 0 || ::setgid(kNobody) != 0 || ::setuid(kNobody) != 0))
      ::_exit(2);
    ::_exit(test() ? 0 : 1);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

TEST_F(Opening, SaysWhenTheFileMayOnlyBeRead) {
  fs::permissions(folder_.path(), fs::perms::all);
  fs::permissions(path_, fs::perms::owner_read | fs::perms::others_read);
  EXPECT_TRUE(holdsForOrdinaryUser([&] {
    return refusalOf(path_).reason == Reason::ReadOnly &&
           YardFile::open(path_, YardFile::Access::ReadOnly).yard() == test::twoDrifts();
  }));
}

TEST_F(Opening, SaysWhenTheFolderMayOnlyBeRead) {
  fs::permissions(path_, fs::perms::all);
  fs::permissions(folder_.path(), fs::perms::others_read | fs::perms::others_exec |
                                      fs::perms::owner_read | fs::perms::owner_exec);
  EXPECT_TRUE(holdsForOrdinaryUser([&] {
    const Refusal refusal = refusalOf(path_);
    return refusal.reason == Reason::ReadOnly &&
           refusal.message.find("lies in a folder") != std::string::npos &&
           YardFile::open(path_, YardFile::Access::ReadOnly).yard() == test::twoDrifts();
  }));
  fs::permissions(folder_.path(), fs::perms::owner_all);
}

TEST_F(Opening, SaysWhenTheFileMayNotEvenBeRead) {
  fs::permissions(folder_.path(), fs::perms::all);
  fs::permissions(path_, fs::perms::none);
  EXPECT_TRUE(holdsForOrdinaryUser(
      [&] { return refusalOf(path_).message.find("may not be read") != std::string::npos; }));
}

}  // namespace
}  // namespace tussock
