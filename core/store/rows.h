// SPDX-License-Identifier: MIT
// The rows of a yard: all of them read, or those of a change set written. Both within the caller's
// transaction.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/edit/change.h"

namespace tussock {

// Throws SQLite::Exception or FormatError.
[[nodiscard]] Yard readYard(SQLite::Database& database);

// Writes what differs, row by row; of a drift only the plants that changed. Throws
// SQLite::Exception, and FormatError when a row to be changed is not there.
void writeRows(SQLite::Database& database, const ChangeSet& edit);

// The row of an object that has none yet; plants are not written.
void insertSettings(SQLite::Database& database, const Settings& settings);

}  // namespace tussock
