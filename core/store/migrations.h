// SPDX-License-Identifier: MIT
// Steps from one version of the schema to the next. Each step is a file of its own,
// core/store/migrations/NNN_what.cpp, and an entry in the list; a fixture of each released version
// is kept in tests/data.
#pragma once

#include <cstdint>
#include <span>

#include <SQLiteCpp/SQLiteCpp.h>

namespace tussock {

struct Migration {
  std::int64_t to = 0;        // the version it leads to, from the one before
  const char* sql = nullptr;  // statements, run in one transaction
};

[[nodiscard]] std::span<const Migration> migrations();  // ascending, without gaps

// Runs what the file lacks; each step and its new version number in one transaction. Does nothing
// to a file that is up to date. Throws SQLite::Exception.
void bringUpToDate(SQLite::Database& database, std::span<const Migration> steps);

}  // namespace tussock
