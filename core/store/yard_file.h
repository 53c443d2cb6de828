// SPDX-License-Identifier: MIT
// A yard file: one SQLite database that holds the yard, its photos and the whole history of edits.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/edit/change.h"

namespace tussock {

// Why a file cannot be used. The message says what is wrong, where, and what to do.
class StoreError : public std::runtime_error {
 public:
  enum class Reason {
    NotFound,
    NotAYard,
    Damaged,
    Newer,
    ReadOnly,
    Locked,
    Full,
    AlreadyExists,
    Changed,
    Other
  };
  StoreError(Reason reason, const std::string& message)
      : std::runtime_error(message), reason_(reason) {}
  [[nodiscard]] Reason reason() const { return reason_; }

 private:
  Reason reason_;
};

struct HistoryEntry {
  std::int64_t number = 0;  // 1 is the oldest kept
  std::string label;
  std::string time;     // UTC, ISO 8601
  bool undone = false;  // could be redone
};

// Whether a yard stands there, sound or not: an ordinary file, by a link too, that begins as one
// does. No error: what cannot be read is none.
[[nodiscard]] bool isYardFile(const std::filesystem::path& path);

class YardFile {
 public:
  enum class Access { ReadWrite, ReadOnly };

  // Throws StoreError(AlreadyExists) rather than write over a file. Photos come later, by commit().
  [[nodiscard]] static YardFile create(const std::filesystem::path& path, const Yard& yard);
  [[nodiscard]] static YardFile open(const std::filesystem::path& path,
                                     Access access = Access::ReadWrite);
  ~YardFile();
  YardFile(YardFile&&) noexcept;
  YardFile& operator=(YardFile&&) noexcept;

  [[nodiscard]] const std::filesystem::path& path() const;
  [[nodiscard]] Access access() const;
  [[nodiscard]] const Yard& yard() const;
  [[nodiscard]] std::int64_t revision() const;
  [[nodiscard]] IdSource& ids();  // never gives an id that the file has seen

  // Writes the rows and the change set in one transaction; on return it is durable. Redo is lost.
  // Throws StoreError(Changed) when another program has written since: call reload() and offer the
  // edit again. EditConflict when the change set was not made for yard(). Whatever is thrown, file
  // and yard() are as they were.
  void commit(const ChangeSet& edit);
  // The same, but one in the history with the last edit that could be undone: undo takes both back.
  // Where the two come to nothing the history has neither.
  void commitIntoLast(const ChangeSet& edit);
  // The label of the edit undone or redone; nothing when there is none. Durable on return. Plan
  // codes that the edit issued stay issued.
  std::optional<std::string> undo();
  std::optional<std::string> redo();
  // The number of the edit that undo takes back next; 0 when there is none.
  [[nodiscard]] std::int64_t lastEdit() const;
  [[nodiscard]] std::optional<std::string> undoLabel() const;
  [[nodiscard]] std::optional<std::string> redoLabel() const;
  [[nodiscard]] std::vector<HistoryEntry> history() const;
  // Drops the history and photos nobody names, and compacts the file.
  void forgetHistory();

  // A whole copy under another name, history and photos too, as it is in the file at one moment.
  // Throws StoreError(AlreadyExists) rather than write over a file.
  void copyTo(const std::filesystem::path& path) const;

  // True when another program has written to the file since this one looked.
  [[nodiscard]] bool changedOutside() const;
  void reload();  // also when another file has taken the place of this one

  // Keeps bytes once, by content; gives their SHA-256 in hexadecimal. They are held back and
  // written in the transaction of the first commit whose change set names the hash.
  std::string putBlob(const std::string& bytes);
  [[nodiscard]] std::string blob(const std::string& hash) const;  // throws StoreError(Damaged)

  // Everything wrong with the file's integrity; empty when it is sound.
  [[nodiscard]] std::vector<std::string> verify() const;

 private:
  struct State;
  explicit YardFile(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

}  // namespace tussock
