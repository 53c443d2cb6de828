// SPDX-License-Identifier: MIT
#include "core/store/database.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace tussock {

namespace {

constexpr int kBusyMilliseconds = 1000;  // longer than any edit takes another program

void set(SQLite::Database& database, int option, int value) {
  database.check(sqlite3_db_config(database.getHandle(), option, value, nullptr));
}

StoreError::Reason reasonOf(const SQLite::Exception& error) {
  switch (error.getErrorCode()) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return StoreError::Reason::Locked;
    case SQLITE_NOTADB:
      return StoreError::Reason::NotAYard;
    case SQLITE_CORRUPT:
    case SQLITE_ERROR:     // a table or column is not there
    case SQLITE_MISMATCH:  // a value of the wrong type
      return StoreError::Reason::Damaged;
    case SQLITE_READONLY:
    case SQLITE_PERM:
      return StoreError::Reason::ReadOnly;
    case SQLITE_FULL:
      return StoreError::Reason::Full;
    default:
      return StoreError::Reason::Other;
  }
}

std::string_view factAndRemedy(StoreError::Reason reason) {
  switch (reason) {
    case StoreError::Reason::Locked:
      return "is being written by another program. Wait a moment, or close it there, and try "
             "again.";
    case StoreError::Reason::NotAYard:
      return "is not a yard file. Choose a file that Tussock has written.";
    case StoreError::Reason::Damaged:
      return "is damaged. Go back to a copy from before.";
    case StoreError::Reason::ReadOnly:
      return "cannot be changed here. Copy it to a folder of your own, or open it for looking "
             "only.";
    case StoreError::Reason::Full:
      return "could not be written because the disk is full. Free some space and do it again; the "
             "file is as it was.";
    case StoreError::Reason::NotFound:
      return "is no longer where it was. Put it back, or open it where it is now.";
    case StoreError::Reason::Changed:
      return "was changed by another program. Take in what it holds now and do the edit again.";
    case StoreError::Reason::Newer:
    case StoreError::Reason::AlreadyExists:
    case StoreError::Reason::Other:
      return "could not be used. Check the disk and the folder, and try again.";
  }
  return {};
}

StoreError::Reason reasonWhereMoved(const std::filesystem::path& path) {
  std::error_code ignored;
  return std::filesystem::exists(path, ignored) ? StoreError::StoreError::Reason::Changed
                                                : StoreError::StoreError::Reason::NotFound;
}

}  // namespace

SQLite::Database connect(const std::filesystem::path& path, int flags) {
  SQLite::Database database(path.string(), flags, kBusyMilliseconds);
  set(database, SQLITE_DBCONFIG_DEFENSIVE, 1);
  set(database, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
  set(database, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0);
  set(database, SQLITE_DBCONFIG_ENABLE_VIEW, 0);
  set(database, SQLITE_DBCONFIG_ENABLE_FKEY, 1);
  database.exec("PRAGMA cell_size_check = ON");
  // FULL, and the folder too: else a power cut could bring back the journal of a finished edit.
  database.exec("PRAGMA synchronous = EXTRA");
  return database;
}

StoreError storeError(StoreError::Reason reason, const std::filesystem::path& path,
                      std::string_view what) {
  return {reason, fmt::format("\"{}\" {}", path.string(), what)};
}

StoreError storeError(const SQLite::Exception& error, const std::filesystem::path& path) {
  if (error.getErrorCode() == SQLITE_CONSTRAINT) return refused(path, error.what());
  if (error.getExtendedErrorCode() == SQLITE_READONLY_ROLLBACK)
    return storeError(StoreError::StoreError::Reason::ReadOnly, path,
                      "was left half written. Open it once for writing, which puts it right.");
  StoreError::Reason reason = reasonOf(error);
  if (error.getExtendedErrorCode() == SQLITE_READONLY_DBMOVED) reason = reasonWhereMoved(path);
  return storeError(reason, path, fmt::format("{} ({})", factAndRemedy(reason), error.what()));
}

StoreError damaged(const std::filesystem::path& path, std::string_view what) {
  const auto reason = StoreError::StoreError::Reason::Damaged;
  return storeError(reason, path, fmt::format("{} ({})", factAndRemedy(reason), what));
}

StoreError refused(const std::filesystem::path& path, std::string_view why) {
  return storeError(StoreError::StoreError::Reason::Other, path,
                    fmt::format("cannot take this edit and is as it was. ({})", why));
}

std::int64_t wholeNumber(SQLite::Database& database, const std::string& sql) {
  SQLite::Statement statement(database, sql);
  if (!statement.executeStep()) throw FormatError("a row is missing: " + sql);
  return statement.getColumn(0).getInt64();
}

}  // namespace tussock
