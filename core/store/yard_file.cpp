// SPDX-License-Identifier: MIT
#include "core/store/yard_file.h"

#include <sqlite3.h>

#include "core/store/blob_table.h"
#include "core/store/history_step.h"
#include "core/store/history_table.h"
#include "core/store/opening.h"
#include "core/store/pending_pictures.h"
#include "core/store/rows.h"
#include "core/store/sha256.h"
#include "core/store/soundness.h"
#include "core/store/verify.h"

namespace tussock {

namespace {

namespace fs = std::filesystem;
using Reason = StoreError::Reason;

// What can be undone and redone next.
struct Labels {
  std::optional<std::string> undo;
  std::optional<std::string> redo;
  std::int64_t lastEdit = 0;
};

Labels readLabels(SQLite::Database& database) {
  auto labelOf = [](const std::optional<HistoryEntry>& entry) {
    return entry ? std::optional(entry->label) : std::nullopt;
  };
  const HistoryTable history(database);
  const auto done = history.lastDone();
  return {labelOf(done), labelOf(history.firstUndone()), done ? done->number : 0};
}

std::int64_t revisionIn(SQLite::Database& database) {
  return wholeNumber(database, "SELECT revision FROM yard");
}

// SQLite's count of what other connections have written.
std::int64_t foreignWrites(SQLite::Database& database) {
  return wholeNumber(database, "PRAGMA data_version");
}

}  // namespace

struct YardFile::State {
  State(fs::path filePath, Access fileAccess)
      : path(std::move(filePath)), access(fileAccess), database(openDatabase(path, access)) {
    load();
  }

  fs::path path;
  Access access;
  SQLite::Database database;
  Yard yard;
  std::int64_t revision = 0;
  std::int64_t foreignWritesSeen = 0;
  IdSource ids;
  Labels labels;
  PendingPictures pending;

  void load();
  [[nodiscard]] std::string jsonOf(const ChangeSet& edit) const;
  void requireWritable() const;
  void requireCurrent();
  void advance(SQLite::Transaction& transaction, Yard next);
  std::optional<std::string> step(HistoryTable::State to);
  [[nodiscard]] bool replaced();
};

// All of one moment, so within one transaction.
void YardFile::State::load() {
  guarded(path, [&] {
    SQLite::Transaction transaction(database);
    const std::int64_t version = foreignWrites(database);
    const std::int64_t newRevision = revisionIn(database);
    const std::int64_t nextId = wholeNumber(database, "SELECT next_id FROM yard");
    Yard newYard = readYard(database);
    labels = readLabels(database);
    yard = std::move(newYard);
    revision = newRevision;
    foreignWritesSeen = version;
    ids.skipTo(std::max(nextId, largestId(yard) + 1));
  });
}

std::string YardFile::State::jsonOf(const ChangeSet& edit) const {
  try {
    return changeSetToJson(edit);
  } catch (const FormatError& error) {
    throw refused(path, error.what());
  }
}

void YardFile::State::requireWritable() const {
  if (access == Access::ReadOnly)
    throw storeError(Reason::ReadOnly, path,
                     "is open for looking only. Open it for writing, or work on a copy.");
}

// Called with the write lock held: from here on nobody else can write.
void YardFile::State::requireCurrent() {
  if (foreignWrites(database) == foreignWritesSeen && revisionIn(database) == revision) return;
  throw storeError(Reason::Changed, path,
                   "was changed by another program. Take in what it holds now and do the edit "
                   "again.");
}

// Another file stands at the path, or none.
bool YardFile::State::replaced() {
  int answer = 0;
  sqlite3_file_control(database.getHandle(), "main", SQLITE_FCNTL_HAS_MOVED, &answer);
  return answer != 0;
}

// Writes the rows in which the next yard differs, and takes it once all is on disk.
void YardFile::State::advance(SQLite::Transaction& transaction, Yard next) {
  const ChangeSet rows = difference(yard, next, {});
  for (const Change& change : rows.changes)
    if (change.after)
      for (const std::string& fault : faultsOf(*change.after)) throw refused(path, fault);
  pending.write(database, rows);
  writeRows(database, rows);
  ids.skipTo(largestId(rows) + 1);
  SQLite::Statement update(database, "UPDATE yard SET revision = ?, next_id = ?");
  update.bind(1, revision + 1);
  update.bind(2, ids.next());
  update.exec();
  Labels newLabels = readLabels(database);
  transaction.commit();
  yard = std::move(next);
  labels = std::move(newLabels);
  ++revision;
  pending.forget(rows);
}

std::optional<std::string> YardFile::State::step(HistoryTable::State to) {
  requireWritable();
  return guarded(path, [&]() -> std::optional<std::string> {
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    requireCurrent();
    HistoryTable history(database);
    const bool undoing = to == HistoryTable::State::Undone;
    const auto entry = undoing ? history.lastDone() : history.firstUndone();
    if (!entry) return std::nullopt;
    const ChangeSet edit = history.edit(entry->number);
    history.mark(entry->number, to);
    try {
      advance(transaction, undoing ? takenBack(yard, edit) : doneAgain(yard, edit));
    } catch (const EditConflict& conflict) {
      throw damaged(path, conflict.what());
    }
    return entry->label;
  });
}

YardFile::YardFile(std::unique_ptr<State> state) : state_(std::move(state)) {}
YardFile::~YardFile() = default;
YardFile::YardFile(YardFile&&) noexcept = default;
YardFile& YardFile::operator=(YardFile&&) noexcept = default;

YardFile YardFile::create(const fs::path& path, const Yard& yard) {
  createDatabase(fs::absolute(path), yard);
  return open(path);
}

YardFile YardFile::open(const fs::path& path, Access access) {
  return YardFile(std::make_unique<State>(fs::absolute(path), access));
}

const fs::path& YardFile::path() const {
  return state_->path;
}
YardFile::Access YardFile::access() const {
  return state_->access;
}
const Yard& YardFile::yard() const {
  return state_->yard;
}
std::int64_t YardFile::revision() const {
  return state_->revision;
}
IdSource& YardFile::ids() {
  return state_->ids;
}

void YardFile::commit(const ChangeSet& edit) {
  if (edit.empty()) return;
  state_->requireWritable();
  const std::string json = state_->jsonOf(edit);
  guarded(state_->path, [&] {
    SQLite::Transaction transaction(state_->database, SQLite::TransactionBehavior::IMMEDIATE);
    state_->requireCurrent();
    HistoryTable(state_->database).append(edit.label, json);
    state_->advance(transaction, apply(state_->yard, edit));
  });
}

void YardFile::commitIntoLast(const ChangeSet& edit) {
  if (edit.empty()) return;
  state_->requireWritable();
  guarded(state_->path, [&] {
    SQLite::Transaction transaction(state_->database, SQLite::TransactionBehavior::IMMEDIATE);
    state_->requireCurrent();
    HistoryTable history(state_->database);
    Yard before = state_->yard, after = apply(state_->yard, edit);
    if (const auto last = history.lastDone()) {
      before = apply(before, inverse(history.edit(last->number)));
      history.drop(last->number);
    }
    const ChangeSet both = difference(before, after, edit.label);
    if (!both.empty()) history.append(both.label, state_->jsonOf(both));
    state_->advance(transaction, std::move(after));
  });
}

std::optional<std::string> YardFile::undo() {
  return state_->step(HistoryTable::State::Undone);
}
std::optional<std::string> YardFile::redo() {
  return state_->step(HistoryTable::State::Done);
}
std::int64_t YardFile::lastEdit() const {
  return state_->labels.lastEdit;
}
std::optional<std::string> YardFile::undoLabel() const {
  return state_->labels.undo;
}
std::optional<std::string> YardFile::redoLabel() const {
  return state_->labels.redo;
}

std::vector<HistoryEntry> YardFile::history() const {
  return guarded(state_->path, [&] { return HistoryTable(state_->database).entries(); });
}

void YardFile::forgetHistory() {
  state_->requireWritable();
  guarded(state_->path, [&] {
    SQLite::Transaction transaction(state_->database, SQLite::TransactionBehavior::IMMEDIATE);
    state_->requireCurrent();
    HistoryTable(state_->database).clear();
    BlobTable(state_->database).dropUnnamed();
    state_->advance(transaction, state_->yard);
    state_->database.exec("VACUUM");
  });
}

void YardFile::copyTo(const fs::path& path) const {
  copyDatabase(state_->database, fs::absolute(path));
}

bool YardFile::changedOutside() const {
  if (state_->replaced()) return true;
  try {
    return guarded(state_->path,
                   [&] { return foreignWrites(state_->database) != state_->foreignWritesSeen; });
  } catch (const StoreError& error) {
    if (error.reason() == Reason::Locked) return false;  // being written; the next look will tell
    throw;
  }
}

void YardFile::reload() {
  if (state_->replaced()) state_->database = openDatabase(state_->path, state_->access);
  state_->load();
}

std::string YardFile::putBlob(const std::string& bytes) {
  return state_->pending.add(bytes);
}

std::string YardFile::blob(const std::string& hash) const {
  if (const std::string* bytes = state_->pending.find(hash)) return *bytes;
  return guarded(state_->path, [&] {
    const auto bytes = BlobTable(state_->database).find(hash);
    if (!bytes || sha256(*bytes) != hash)
      throw damaged(state_->path, "the picture " + hash + " is missing or not what it was");
    return *bytes;
  });
}

std::vector<std::string> YardFile::verify() const {
  return faultsOf(state_->database, state_->yard);
}

}  // namespace tussock
