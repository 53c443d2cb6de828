// SPDX-License-Identifier: MIT
// Files that earlier versions have written, kept in tests/data as they were: they open, undo and
// redo as if they were of today.
#include <filesystem>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/edit/draft.h"
#include "core/store/schema.h"
#include "core/store/yard_file.h"
#include "tests/support/spoil.h"
#include "tests/support/temporary_folder.h"

namespace tussock {
namespace {

using testing::IsEmpty;

class OlderFile : public testing::Test {
 protected:
  OlderFile() { std::filesystem::copy_file(original_, path_); }
  [[nodiscard]] std::int64_t version() const {
    SQLite::Database database(path_.string(), SQLite::OPEN_READONLY);
    return database.execAndGet("PRAGMA user_version").getInt64();
  }

  const std::filesystem::path original_ =
      std::filesystem::path(TUSSOCK_SOURCE_DIR) / "tests/data/version-1.yard";
  test::TemporaryFolder folder_;
  const std::filesystem::path path_ = folder_ / "older.yard";
};

TEST_F(OlderFile, IsBroughtUpToDateWhenOpenedForWriting) {
  ASSERT_EQ(version(), 1);
  const YardFile file = YardFile::open(path_);
  EXPECT_EQ(version(), kSchemaVersion);
  EXPECT_THAT(file.verify(), IsEmpty());
  EXPECT_EQ(file.yard().settings.name, "First version");
  EXPECT_EQ(file.yard().settings.hardinessZone, "6b");
  EXPECT_EQ(file.yard().settings.deerAbout, DeerAbout::No);
  EXPECT_EQ(file.yard().beds.size(), 1u);
}

TEST_F(OlderFile, ItsHistoryStillUndoesAndRedoes) {
  YardFile file = YardFile::open(path_);
  EXPECT_EQ(file.redo(), "Fill Walk");
  EXPECT_EQ(file.yard().drifts.size(), 5u);
  for (const char* label : {"Fill Walk", "Import more.geojson", "Import site.geojson"})
    EXPECT_EQ(file.undo(), label);
  EXPECT_TRUE(file.yard().beds.empty());
  EXPECT_EQ(file.redo(), "Import site.geojson");
  EXPECT_THAT(file.verify(), IsEmpty());
}

TEST_F(OlderFile, TakesWhatIsNew) {
  YardFile file = YardFile::open(path_);
  Settings settings = file.yard().settings;
  settings.deerAbout = DeerAbout::Yes;
  Draft draft(file.yard());
  draft.put(settings);
  file.commit(draft.finish("Deer"));
  const YardFile again = YardFile::open(path_, YardFile::Access::ReadOnly);
  EXPECT_EQ(again.yard().settings.deerAbout, DeerAbout::Yes);
  EXPECT_THAT(again.verify(), IsEmpty());
}

TEST_F(OlderFile, OpenedForLookingOnlyItStaysAsItIs) {
  const std::string before = test::bytesOf(path_);
  const YardFile file = YardFile::open(path_, YardFile::Access::ReadOnly);
  EXPECT_EQ(file.yard().settings.name, "First version");
  EXPECT_EQ(file.yard().settings.deerAbout, DeerAbout::No);
  EXPECT_EQ(file.history().size(), 3u);
  EXPECT_THAT(file.verify(), IsEmpty());
  EXPECT_FALSE(file.changedOutside());
  EXPECT_EQ(test::bytesOf(path_), before);
}

}  // namespace
}  // namespace tussock
