// SPDX-License-Identifier: MIT
// Two programs on one file: nothing is overwritten, nothing is taken for what it no longer is.
#include <gmock/gmock.h>

#include "core/store/yard_file.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;
using Reason = StoreError::Reason;
using test::renameTo;

class Sharing : public testing::Test {
 protected:
  test::TemporaryFolder folder_;
  fs::path path_ = folder_ / "a.yard";
  YardFile mine_ = YardFile::create(path_, test::twoDrifts());
  YardFile theirs_ = YardFile::open(path_);

  void expectRefused(const std::function<void()>& act, Reason reason) {
    const Yard before = mine_.yard();
    const std::int64_t revision = mine_.revision();
    try {
      act();
      ADD_FAILURE() << "done";
    } catch (const StoreError& error) {
      EXPECT_EQ(error.reason(), reason) << error.what();
    }
    EXPECT_EQ(mine_.yard(), before);
    EXPECT_EQ(mine_.revision(), revision);
  }
};

TEST_F(Sharing, OwnEditsAreNotChangesFromOutside) {
  mine_.commit(renameTo(mine_.yard(), "Hill"));
  mine_.undo();
  mine_.forgetHistory();
  EXPECT_FALSE(mine_.changedOutside());
  mine_.commit(renameTo(mine_.yard(), "Dale"));
  EXPECT_FALSE(mine_.changedOutside());
}

TEST_F(Sharing, AnEditElsewhereIsNoticedAndNeverOverwritten) {
  theirs_.commit(renameTo(theirs_.yard(), "Theirs"));
  EXPECT_TRUE(mine_.changedOutside());
  expectRefused([&] { mine_.commit(renameTo(mine_.yard(), "Mine")); }, Reason::Changed);
  expectRefused([&] { mine_.undo(); }, Reason::Changed);
  expectRefused([&] { mine_.redo(); }, Reason::Changed);
  expectRefused([&] { mine_.forgetHistory(); }, Reason::Changed);
  EXPECT_EQ(YardFile::open(path_).yard().settings.name, "Theirs");
}

TEST_F(Sharing, ReloadTakesInWhatIsThere) {
  theirs_.commit(renameTo(theirs_.yard(), "Theirs"));
  mine_.reload();
  EXPECT_FALSE(mine_.changedOutside());
  EXPECT_EQ(mine_.yard(), theirs_.yard());
  EXPECT_EQ(mine_.undoLabel(), theirs_.undoLabel());
  mine_.commit(renameTo(mine_.yard(), "Mine"));
  EXPECT_TRUE(theirs_.changedOutside());
  theirs_.reload();
  EXPECT_EQ(theirs_.yard().settings.name, "Mine");
}

TEST_F(Sharing, ReloadNeverGivesAnIdTakenElsewhere) {
  Draft draft(theirs_.yard());
  Tree tree;
  tree.id = theirs_.ids().take<Tree>();
  draft.put(tree);
  theirs_.commit(draft.finish("Add tree"));
  mine_.reload();
  EXPECT_GT(mine_.ids().next(), tree.id.value());
}

TEST_F(Sharing, RowsWrittenByHandAreNoticed) {
  test::runSql(path_, "UPDATE bed SET name = 'Back'");
  EXPECT_TRUE(mine_.changedOutside());
  expectRefused([&] { mine_.commit(renameTo(mine_.yard(), "Mine")); }, Reason::Changed);
  mine_.reload();
  EXPECT_EQ(mine_.yard().beds.begin()->name, "Back");
}

TEST_F(Sharing, AnEditWhileAnotherProgramWritesIsOfferedAgain) {
  SQLite::Database other(path_.string(), SQLite::OPEN_READWRITE);
  other.exec("BEGIN IMMEDIATE");
  expectRefused([&] { mine_.commit(renameTo(mine_.yard(), "Mine")); }, Reason::Locked);
  other.exec("ROLLBACK");
  mine_.commit(renameTo(mine_.yard(), "Mine"));
  EXPECT_EQ(YardFile::open(path_).yard().settings.name, "Mine");
}

TEST_F(Sharing, ALongReaderDelaysAnEditButSpoilsNothing) {
  SQLite::Database reader(path_.string(), SQLite::OPEN_READONLY);
  reader.exec("BEGIN");
  EXPECT_EQ(reader.execAndGet("SELECT revision FROM yard").getInt64(), 0);
  expectRefused([&] { mine_.commit(renameTo(mine_.yard(), "Mine")); }, Reason::Locked);
  reader.exec("COMMIT");
  mine_.commit(renameTo(mine_.yard(), "Mine"));
  EXPECT_EQ(mine_.revision(), 1);
  EXPECT_THAT(mine_.verify(), testing::IsEmpty());
}

TEST_F(Sharing, ReadersMayReadWhileAFileIsOpen) {
  mine_.commit(renameTo(mine_.yard(), "Mine"));
  EXPECT_EQ(test::askSql(path_, "SELECT count(*) FROM plant"), 12);
  EXPECT_EQ(YardFile::open(path_, YardFile::Access::ReadOnly).yard(), mine_.yard());
}

TEST_F(Sharing, AFilePutInItsPlaceIsNotMixedWithIt) {
  (void)YardFile::create(folder_ / "b.yard", Yard{});
  const std::string other = test::bytesOf(folder_ / "b.yard");
  fs::rename(folder_ / "b.yard", path_);
  EXPECT_TRUE(mine_.changedOutside());
  expectRefused([&] { mine_.commit(renameTo(mine_.yard(), "Mine")); }, Reason::Changed);
  EXPECT_EQ(test::bytesOf(path_), other);
  mine_.reload();
  EXPECT_EQ(mine_.yard(), Yard{});
  mine_.commit(renameTo(mine_.yard(), "Mine"));
  EXPECT_EQ(YardFile::open(path_).yard().settings.name, "Mine");
}

TEST_F(Sharing, AFileTakenAwayIsMissed) {
  fs::rename(path_, folder_ / "b.yard");
  EXPECT_TRUE(mine_.changedOutside());
  expectRefused([&] { mine_.commit(renameTo(mine_.yard(), "Mine")); }, Reason::NotFound);
  expectRefused([&] { mine_.reload(); }, Reason::NotFound);
  fs::rename(folder_ / "b.yard", path_);
  mine_.commit(renameTo(mine_.yard(), "Mine"));
  EXPECT_EQ(mine_.yard().settings.name, "Mine");
}

}  // namespace
}  // namespace tussock
