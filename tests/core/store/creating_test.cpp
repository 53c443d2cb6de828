// SPDX-License-Identifier: MIT
// Making a yard file: never in place of another, never half of one.
#include <gmock/gmock.h>

#include "core/store/yard_file.h"
#include "tests/support/small_yards.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

namespace fs = std::filesystem;

StoreError::Reason reasonForRefusing(const fs::path& path, const Yard& yard) {
  try {
    (void)YardFile::create(path, yard);
  } catch (const StoreError& error) {
    return error.reason();
  }
  ADD_FAILURE() << "created";
  return StoreError::Reason::Other;
}

std::ptrdiff_t filesIn(const test::TemporaryFolder& folder) {
  return std::distance(fs::directory_iterator(folder.path()), {});
}

TEST(Creating, LeavesOneFileAndNoOther) {
  const test::TemporaryFolder folder;
  const YardFile file = YardFile::create(folder / "a.yard", test::twoDrifts());
  EXPECT_EQ(filesIn(folder), 1);
  EXPECT_EQ(file.path(), folder / "a.yard");
}

TEST(Creating, NeverWritesOverAFile) {
  const test::TemporaryFolder folder;
  test::writeBytes(folder / "a.yard", "a letter");
  EXPECT_EQ(reasonForRefusing(folder / "a.yard", Yard{}), StoreError::Reason::AlreadyExists);
  EXPECT_EQ(test::bytesOf(folder / "a.yard"), "a letter");
  EXPECT_EQ(filesIn(folder), 1);
}

TEST(Creating, NeverWritesThroughADanglingLink) {
  const test::TemporaryFolder folder;
  fs::create_symlink(folder / "elsewhere", folder / "a.yard");
  EXPECT_EQ(reasonForRefusing(folder / "a.yard", Yard{}), StoreError::Reason::AlreadyExists);
  EXPECT_FALSE(fs::exists(folder / "elsewhere"));
}

TEST(Creating, SaysWhenTheFolderIsNotThere) {
  const test::TemporaryFolder folder;
  EXPECT_EQ(reasonForRefusing(folder / "no" / "a.yard", Yard{}), StoreError::Reason::NotFound);
}

TEST(Creating, LeavesNothingWhenTheYardIsRefused) {
  const test::TemporaryFolder folder;
  Draft draft{Yard{}};
  Drift stray;
  stray.id = Id<Drift>(5);
  stray.bed = Id<Bed>(4);  // there is none
  draft.put(stray);
  EXPECT_EQ(reasonForRefusing(folder / "a.yard", draft.yard()), StoreError::Reason::Other);
  EXPECT_EQ(filesIn(folder), 0);
}

TEST(Creating, RefusesTextThatIsNotUtf8) {
  const test::TemporaryFolder folder;
  Yard yard;
  yard.settings.name = "Hill \xff";
  EXPECT_EQ(reasonForRefusing(folder / "a.yard", yard), StoreError::Reason::Other);
  EXPECT_EQ(filesIn(folder), 0);
}

TEST(Creating, MarksTheFileAsAYard) {
  const test::TemporaryFolder folder;
  (void)YardFile::create(folder / "a.yard", Yard{});
  // File format of SQLite, section 1.3: the application id stands at byte 68, big-endian.
  EXPECT_EQ(test::bytesOf(folder / "a.yard").substr(68, 4), "TUSS");
  EXPECT_EQ(test::askSql(folder / "a.yard", "PRAGMA user_version"), 2);
}

TEST(Creating, TakesOddNames) {
  const test::TemporaryFolder folder;
  for (const char* name : {"with space.yard", "what?#%.yard", "Gärten 🌿.yard", "-rf", ":memory:"})
    EXPECT_EQ(YardFile::create(folder / name, test::twoDrifts()).yard(), test::twoDrifts());
}

TEST(Creating, TakesANameWithoutAFolder) {
  const test::TemporaryFolder folder;
  const fs::path before = fs::current_path();
  fs::current_path(folder.path());
  const fs::path made = YardFile::create("a.yard", Yard{}).path();
  fs::current_path(before);
  EXPECT_TRUE(fs::equivalent(made, folder / "a.yard"));
}

}  // namespace
}  // namespace tussock
