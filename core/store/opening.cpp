// SPDX-License-Identifier: MIT
#include "core/store/opening.h"

#include <array>
#include <fstream>
#include <utility>

#include <fmt/format.h>
#include <sqlite3.h>
#include <SQLiteCpp/Backup.h>
#include <unistd.h>

#include "core/store/migrations.h"
#include "core/store/schema.h"

namespace tussock {

namespace {

namespace fs = std::filesystem;
using Reason = StoreError::Reason;

constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::uintmax_t kSmallestDatabase = 512;  // bytes: one page of the least size

void requireFile(const fs::path& path) {
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (!fs::exists(status))
    throw storeError(Reason::NotFound, path, "is not there. Check the name and the folder.");
  if (fs::is_directory(status))
    throw storeError(Reason::NotAYard, path, "is a folder. Choose a yard file in it.");
  if (!fs::is_regular_file(status))
    throw storeError(Reason::NotAYard, path, "is not an ordinary file. Choose a yard file.");
}

void requireMagic(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file)
    throw storeError(Reason::Other, path, "may not be read. Ask its owner for leave to read it.");
  std::array<char, kMagic.size()> start{};
  file.read(start.data(), start.size());
  if (file.gcount() == 0)
    throw storeError(Reason::NotAYard, path, "is empty. Choose a file that Tussock has written.");
  if (std::string_view(start.data(), start.size()) != kMagic)
    throw storeError(Reason::NotAYard, path,
                     "is not a yard file. Choose a file that Tussock has written.");
  if (fs::file_size(path) < kSmallestDatabase) throw damaged(path, "it has been cut short");
}

void requireWritable(const fs::path& path) {
  const fs::path folder = path.parent_path();
  if (::access(path.c_str(), W_OK) != 0)
    throw storeError(
        Reason::ReadOnly, path,
        "may only be read. Open it for looking only, or copy it to a folder of yours.");
  if (::access(folder.c_str(), W_OK) != 0)
    throw storeError(Reason::ReadOnly, path,
                     "lies in a folder that may only be read. Open it for looking only, or copy it "
                     "to a folder of yours.");
}

// SQLite itself does not mind when part of the last page is missing.
void requireWhole(SQLite::Database& database, const fs::path& path) {
  const std::int64_t bytes =
      wholeNumber(database, "PRAGMA page_count") * wholeNumber(database, "PRAGMA page_size");
  if (std::cmp_less(fs::file_size(path), bytes)) throw damaged(path, "it has been cut short");
}

void requireYard(SQLite::Database& database, const fs::path& path) {
  SQLite::Transaction oneMoment(database);
  if (wholeNumber(database, "PRAGMA application_id") != kApplicationId)
    throw storeError(Reason::NotAYard, path,
                     "is another program's database. Choose a file that Tussock has written.");
  const std::int64_t version = wholeNumber(database, "PRAGMA user_version");
  if (version > kSchemaVersion)
    throw storeError(Reason::Newer, path,
                     fmt::format("was written by a newer Tussock (file version {}; this one knows "
                                 "{}). Update Tussock to open it.",
                                 version, kSchemaVersion));
  if (version < 1) throw damaged(path, fmt::format("file version {}", version));
  requireWhole(database, path);
}

int flagsFor(YardFile::Access access) {
  return access == YardFile::Access::ReadWrite ? SQLite::OPEN_READWRITE : SQLite::OPEN_READONLY;
}

bool isOlder(SQLite::Database& database) {
  return wholeNumber(database, "PRAGMA user_version") < kSchemaVersion;
}

// A file of an earlier version can be looked at without being changed: what is read is a copy in
// memory, brought up to date. It does not follow what others write to the file meanwhile.
SQLite::Database newerCopy(SQLite::Database& database) {
  SQLite::Database copy = connect(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  SQLite::Backup(copy, database).executeStep();
  bringUpToDate(copy, migrations());
  return copy;
}

}  // namespace

// The header of a database has the application's number at byte 68, the highest of its four first
// (SQLite, Database File Format, 1.3). Read without SQLite, which would take a lock.
bool isYardFile(const fs::path& path) {
  constexpr std::size_t kNumberAt = 68, kNumberBytes = 4;
  std::error_code error;
  if (!fs::is_regular_file(path, error)) return false;
  std::ifstream file(path, std::ios::binary);
  std::array<char, kNumberAt + kNumberBytes> start{};
  if (!file.read(start.data(), start.size())) return false;
  if (std::string_view(start.data(), kMagic.size()) != kMagic) return false;
  std::int64_t number = 0;
  for (std::size_t at = kNumberAt; at < start.size(); ++at)
    number = number * 256 + static_cast<unsigned char>(start[at]);
  return number == kApplicationId;
}

SQLite::Database openDatabase(const fs::path& path, YardFile::Access access) {
  return guarded(path, [&] {
    requireFile(path);
    requireMagic(path);
    if (access == YardFile::Access::ReadWrite) requireWritable(path);
    SQLite::Database database = connect(path, flagsFor(access));
    requireYard(database, path);
    if (access == YardFile::Access::ReadOnly && isOlder(database)) return newerCopy(database);
    bringUpToDate(database, migrations());
    return database;
  });
}

}  // namespace tussock
