// SPDX-License-Identifier: MIT
#include "core/store/blob_table.h"

#include "core/exchange/change_json.h"

namespace tussock {

bool BlobTable::has(const std::string& hash) const {
  SQLite::Statement row(database_, "SELECT 1 FROM blob WHERE hash = ?");
  row.bind(1, hash);
  return row.executeStep();
}

std::optional<std::string> BlobTable::find(const std::string& hash) const {
  SQLite::Statement row(database_, "SELECT bytes FROM blob WHERE hash = ?");
  row.bind(1, hash);
  return row.executeStep() ? std::optional(row.getColumn(0).getString()) : std::nullopt;
}

void BlobTable::insert(const std::string& hash, const std::string& bytes) {
  if (!std::in_range<int>(bytes.size())) throw FormatError("a picture is larger than 2 GB");
  SQLite::Statement statement(database_, "INSERT INTO blob (hash, bytes) VALUES (?, ?)");
  statement.bind(1, hash);
  statement.bindNoCopy(2, static_cast<const void*>(bytes.data()), static_cast<int>(bytes.size()));
  statement.exec();
}

void BlobTable::dropUnnamed() {
  database_.exec("DELETE FROM blob WHERE hash NOT IN (SELECT content_hash FROM photo)");
}

}  // namespace tussock
