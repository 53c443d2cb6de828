// SPDX-License-Identifier: MIT
// The edits a file has seen, oldest first: those done, then those undone that could be redone.
// All within the caller's transaction; throws SQLite::Exception or FormatError.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/edit/change.h"
#include "core/store/yard_file.h"

namespace tussock {

class HistoryTable {
 public:
  enum class State { Done, Undone };

  explicit HistoryTable(SQLite::Database& database) : database_(database) {}

  // The entry that undo takes next, or redo.
  [[nodiscard]] std::optional<HistoryEntry> lastDone() const;
  [[nodiscard]] std::optional<HistoryEntry> firstUndone() const;
  [[nodiscard]] std::vector<HistoryEntry> entries() const;
  [[nodiscard]] ChangeSet edit(std::int64_t number) const;

  // In place of everything undone.
  void append(const std::string& label, const std::string& changeJson);
  void drop(std::int64_t from);  // that entry and all after it
  void clear();
  void mark(std::int64_t number, State state);

 private:
  SQLite::Database& database_;
};

}  // namespace tussock
