// SPDX-License-Identifier: MIT
// Statements on the table of a kind of object, and those already prepared.
#pragma once

#include <map>
#include <string>

#include "core/store/columns.h"

namespace tussock {

template <class T>
[[nodiscard]] std::string selectSql() {
  return fmt::format("SELECT {} FROM {}", fmt::join(columnsOf<T>(), ", "), kKind<T>);
}
template <class T>
[[nodiscard]] std::string insertSql() {
  const auto columns = columnsOf<T>();
  const std::vector<std::string> marks(columns.size(), "?");
  return fmt::format("INSERT INTO {} ({}) VALUES ({})", kKind<T>, fmt::join(columns, ", "),
                     fmt::join(marks, ", "));
}
// Parameters in the order of the columns: ?1 is the id.
template <class T>
[[nodiscard]] std::string updateSql() {
  std::vector<std::string> settings;
  for (const std::string& column : columnsOf<T>())
    settings.push_back(fmt::format("{} = ?{}", column, settings.size() + 1));
  return fmt::format("UPDATE {} SET {} WHERE id = ?1", kKind<T>, fmt::join(settings, ", "));
}
template <class T>
[[nodiscard]] std::string deleteSql() {
  return fmt::format("DELETE FROM {} WHERE id = ?", kKind<T>);
}

// Prepares each statement once.
class Statements {
 public:
  explicit Statements(SQLite::Database& database) : database_(database) {}
  [[nodiscard]] SQLite::Statement& operator[](const std::string& sql) {
    auto& statement = prepared_.try_emplace(sql, database_, sql).first->second;
    statement.reset();
    return statement;
  }

 private:
  SQLite::Database& database_;
  std::map<std::string, SQLite::Statement> prepared_;
};

// Runs a statement that must change exactly one row.
void changeOneRow(SQLite::Statement& statement);

}  // namespace tussock
