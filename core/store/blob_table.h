// SPDX-License-Identifier: MIT
// Pictures by the SHA-256 of their bytes, each kept once. Throws SQLite::Exception.
#pragma once

#include <optional>
#include <string>

#include <SQLiteCpp/SQLiteCpp.h>

namespace tussock {

class BlobTable {
 public:
  explicit BlobTable(SQLite::Database& database) : database_(database) {}

  [[nodiscard]] bool has(const std::string& hash) const;
  [[nodiscard]] std::optional<std::string> find(const std::string& hash) const;
  void insert(const std::string& hash, const std::string& bytes);
  void dropUnnamed();  // that no photo row names; history must be gone already

 private:
  SQLite::Database& database_;
};

}  // namespace tussock
