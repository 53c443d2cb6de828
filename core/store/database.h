// SPDX-License-Identifier: MIT
// The database behind a yard file: how a connection is set, and SQLite's errors in plain words.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/exchange/change_json.h"
#include "core/store/yard_file.h"

namespace tussock {

// A connection with foreign keys on, every write synchronised, and nothing of the file's own schema
// trusted: no triggers, no views, no functions called from it. Flags as SQLite::Database takes
// them. Throws SQLite::Exception.
[[nodiscard]] SQLite::Database connect(const std::filesystem::path& path, int flags);

[[nodiscard]] StoreError storeError(const SQLite::Exception& error,
                                    const std::filesystem::path& path);
// "<path>" <what> in the words of all messages here.
[[nodiscard]] StoreError storeError(StoreError::Reason reason, const std::filesystem::path& path,
                                    std::string_view what);
[[nodiscard]] StoreError damaged(const std::filesystem::path& path, std::string_view what);
[[nodiscard]] StoreError refused(const std::filesystem::path& path, std::string_view why);

// Runs f; errors of SQLite and the file system, and content that cannot be read, come out as
// StoreError.
template <class F>
auto guarded(const std::filesystem::path& path, F&& f) {
  try {
    return f();
  } catch (const SQLite::Exception& error) {
    throw storeError(error, path);
  } catch (const std::filesystem::filesystem_error& error) {
    throw storeError(StoreError::Reason::Other, path,
                     "could not be looked at: " + error.code().message() + ".");
  } catch (const FormatError& error) {
    throw damaged(path, error.what());
  }
}

[[nodiscard]] std::int64_t wholeNumber(SQLite::Database& database, const std::string& sql);

}  // namespace tussock
