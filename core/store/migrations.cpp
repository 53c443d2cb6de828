// SPDX-License-Identifier: MIT
#include "core/store/migrations.h"

#include <array>

#include <fmt/format.h>

#include "core/store/database.h"
#include "core/store/migrations/steps.h"

namespace tussock {

std::span<const Migration> migrations() {
  static const std::array<Migration, 1> steps{{{2, deerStep()}}};
  return steps;
}

void bringUpToDate(SQLite::Database& database, std::span<const Migration> steps) {
  for (const Migration& step : steps) {
    if (wholeNumber(database, "PRAGMA user_version") >= step.to) continue;
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (wholeNumber(database, "PRAGMA user_version") != step.to - 1) continue;
    database.exec(step.sql);
    database.exec(fmt::format("PRAGMA user_version = {}", step.to));
    transaction.commit();
  }
}

}  // namespace tussock
