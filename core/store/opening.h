// SPDX-License-Identifier: MIT
// From a path to a connection: making a yard file where there is none, and opening one after
// looking at what it is. Opening changes nothing in the file, unless it has to finish what a
// program left half done.
#pragma once

#include <filesystem>

#include "core/store/database.h"

namespace tussock {

// Throws StoreError.
[[nodiscard]] SQLite::Database openDatabase(const std::filesystem::path& path,
                                            YardFile::Access access);
// Writes under another name in the same folder and gives it its own when it is whole.
void createDatabase(const std::filesystem::path& path, const Yard& yard);
// The same for a copy of an open database, as it was at one moment, whoever else writes.
void copyDatabase(SQLite::Database& database, const std::filesystem::path& path);

}  // namespace tussock
