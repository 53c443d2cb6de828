// SPDX-License-Identifier: MIT
// For tests that look at a file from outside, or do to it what nobody should.
#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <SQLiteCpp/SQLiteCpp.h>

namespace tussock::test {

[[nodiscard]] inline std::string bytesOf(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

inline void writeBytes(const std::filesystem::path& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary).write(bytes.data(), std::ssize(bytes));
}

// Runs SQL on the file as any other program could, foreign keys not kept.
inline void runSql(const std::filesystem::path& path, const std::string& sql) {
  SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
  database.exec(sql);
}

[[nodiscard]] inline std::int64_t askSql(const std::filesystem::path& path,
                                         const std::string& sql) {
  SQLite::Database database(path.string(), SQLite::OPEN_READONLY);
  return database.execAndGet(sql).getInt64();
}

}  // namespace tussock::test
