// SPDX-License-Identifier: MIT
#include "core/store/migrations.h"

#include <array>

#include <gtest/gtest.h>

#include "core/store/schema.h"

namespace tussock {
namespace {

constexpr std::array<Migration, 2> kSteps{{{2, "ALTER TABLE word ADD COLUMN second TEXT"},
                                           {3, "ALTER TABLE word ADD COLUMN third TEXT"}}};

SQLite::Database atVersion(int version) {
  SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec("CREATE TABLE word (first TEXT)");
  database.exec("PRAGMA user_version = " + std::to_string(version));
  return database;
}

std::int64_t ask(SQLite::Database& database, const std::string& sql) {
  return database.execAndGet(sql).getInt64();
}

TEST(Migrations, LeadToTheVersionOfTheSchema) {
  std::int64_t version = 1;
  for (const Migration& step : migrations()) EXPECT_EQ(step.to, ++version);
  EXPECT_EQ(version, kSchemaVersion);
}

TEST(Migrations, RunEveryStepTheFileLacks) {
  SQLite::Database database = atVersion(1);
  bringUpToDate(database, kSteps);
  EXPECT_EQ(ask(database, "PRAGMA user_version"), 3);
  EXPECT_EQ(ask(database, "SELECT count(*) FROM pragma_table_info('word')"), 3);
}

TEST(Migrations, RunOnlyTheStepsTheFileLacks) {
  SQLite::Database database = atVersion(2);
  bringUpToDate(database, kSteps);
  EXPECT_EQ(ask(database, "PRAGMA user_version"), 3);
  EXPECT_EQ(ask(database, "SELECT count(*) FROM pragma_table_info('word')"), 2);
}

TEST(Migrations, LeaveAFileThatIsUpToDateAlone) {
  SQLite::Database database = atVersion(3);
  const int changes = database.getTotalChanges();
  bringUpToDate(database, kSteps);
  EXPECT_EQ(database.getTotalChanges(), changes);
  EXPECT_EQ(ask(database, "SELECT count(*) FROM pragma_table_info('word')"), 1);
}

TEST(Migrations, AStepThatFailsLeavesTheVersionBefore) {
  SQLite::Database database = atVersion(1);
  const std::array<Migration, 2> steps{
      {kSteps[0], {3, "ALTER TABLE word ADD COLUMN third TEXT; SELECT nonsense"}}};
  EXPECT_THROW(bringUpToDate(database, steps), SQLite::Exception);
  EXPECT_EQ(ask(database, "PRAGMA user_version"), 2);
  EXPECT_EQ(ask(database, "SELECT count(*) FROM pragma_table_info('word')"), 2);
}

}  // namespace
}  // namespace tussock
