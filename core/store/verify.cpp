// SPDX-License-Identifier: MIT
#include "core/store/verify.h"

#include <set>
#include <tuple>

#include <fmt/format.h>

#include "core/store/blob_table.h"
#include "core/store/database.h"
#include "core/store/history_step.h"
#include "core/store/history_table.h"
#include "core/store/rows.h"
#include "core/store/schema.h"
#include "core/store/sha256.h"
#include "core/store/soundness.h"

namespace tussock {

namespace {

using FaultList = std::vector<std::string>;

void addPages(SQLite::Database& database, FaultList& faults) {
  SQLite::Statement rows(database, "PRAGMA integrity_check");
  while (rows.executeStep())
    if (const std::string text = rows.getColumn(0).getString(); text != "ok")
      faults.push_back("The file's pages: " + text);
}

void addReferences(SQLite::Database& database, FaultList& faults) {
  SQLite::Statement rows(database, "PRAGMA foreign_key_check");
  while (rows.executeStep())
    faults.push_back(fmt::format("{} {} names a {} that is not there.",
                                 rows.getColumn(0).getString(), rows.getColumn(1).getInt64(),
                                 rows.getColumn(2).getString()));
}

using SchemaEntry = std::tuple<std::string, std::string, std::string>;  // type, name, SQL

std::set<SchemaEntry> schemaOf(SQLite::Database& database) {
  std::set<SchemaEntry> entries;
  SQLite::Statement rows(database, "SELECT type, name, coalesce(sql, '') FROM sqlite_schema");
  while (rows.executeStep())
    entries.emplace(rows.getColumn(0).getString(), rows.getColumn(1).getString(),
                    rows.getColumn(2).getString());
  return entries;
}

void addSchema(SQLite::Database& database, FaultList& faults) {
  SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  fresh.exec(schemaSql());
  const auto expected = schemaOf(fresh);
  const auto found = schemaOf(database);
  for (const SchemaEntry& entry : expected)
    if (!found.contains(entry))
      faults.push_back(fmt::format("The {} {} is missing or is not as it should be.",
                                   std::get<0>(entry), std::get<1>(entry)));
  for (const SchemaEntry& entry : found)
    if (!expected.contains(entry))
      faults.push_back(fmt::format("The {} {} is not one of a yard file.", std::get<0>(entry),
                                   std::get<1>(entry)));
}

void addRows(SQLite::Database& database, const Yard& yard, FaultList& faults) {
  const Yard read = readYard(database);
  if (!(read == yard)) faults.emplace_back("The rows are not the yard that is open.");
  for (std::string& fault : faultsOf(read)) faults.push_back(std::move(fault));
  if (largestId(read) >= wholeNumber(database, "SELECT next_id FROM yard"))
    faults.emplace_back("The next id to give is one that is taken already.");
}

void addBlobs(SQLite::Database& database, FaultList& faults) {
  SQLite::Statement rows(database, "SELECT hash, bytes FROM blob");
  while (rows.executeStep())
    if (const std::string hash = rows.getColumn(0).getString();
        sha256(rows.getColumn(1).getString()) != hash)
      faults.push_back(fmt::format("The picture {} is not what it was.", hash));
}

// Undoes and redoes every entry on a copy of the yard.
class Replay {
 public:
  Replay(SQLite::Database& database, const Yard& yard, FaultList& faults)
      : history_(database), blobs_(database), yard_(yard), faults_(faults) {
    nextId_ = wholeNumber(database, "SELECT next_id FROM yard");
  }

  void run() {
    std::vector<HistoryEntry> done;
    std::vector<HistoryEntry> undone;
    for (HistoryEntry& entry : history_.entries()) {
      if (!entry.undone && !undone.empty())
        faults_.emplace_back("In the history something done follows something undone.");
      (entry.undone ? undone : done).push_back(std::move(entry));
    }
    const std::vector<HistoryEntry> backwards(done.rbegin(), done.rend());
    thereAndBack(backwards, done, Step::Undo);
    const std::vector<HistoryEntry> undoneBackwards(undone.rbegin(), undone.rend());
    thereAndBack(undone, undoneBackwards, Step::Redo);
  }

 private:
  enum class Step { Undo, Redo };

  void thereAndBack(const std::vector<HistoryEntry>& there, const std::vector<HistoryEntry>& back,
                    Step step) {
    Yard at = yard_;
    for (const HistoryEntry& entry : there)
      if (!take(at, entry, step)) return;
    for (const HistoryEntry& entry : back)
      if (!take(at, entry, step == Step::Undo ? Step::Redo : Step::Undo)) return;
    if (!leadsBack(std::move(at)))
      faults_.emplace_back("The history does not lead back to the yard.");
  }

  // Codes issued by what was done again stay, so there may be more than the yard has: an undo by a
  // release that took them back is in older files.
  [[nodiscard]] bool leadsBack(Yard at) const {
    for (const PlanCode& code : yard_.planCodes)
      if (const PlanCode* kept = at.planCodes.find(code.id); kept == nullptr || !(*kept == code))
        return false;
    at.planCodes = yard_.planCodes;
    return at == yard_;
  }

  bool take(Yard& at, const HistoryEntry& entry, Step step) {
    try {
      const ChangeSet edit = history_.edit(entry.number);
      inspect(entry, edit);
      at = step == Step::Undo ? takenBack(at, edit) : doneAgain(at, edit);
      return true;
    } catch (const std::runtime_error& error) {
      faults_.push_back(fmt::format("History entry {} ({}) does not fit: {}", entry.number,
                                    entry.label, error.what()));
      return false;
    }
  }

  void inspect(const HistoryEntry& entry, const ChangeSet& edit) {
    if (!inspected_.insert(entry.number).second) return;
    if (edit.label != entry.label || largestId(edit) >= nextId_)
      faults_.push_back(
          fmt::format("History entry {} ({}) is not as written.", entry.number, entry.label));
    for (const Change& change : edit.changes) inspect(change.before), inspect(change.after);
  }

  void inspect(const std::optional<Object>& object) {
    const Photo* photo = object ? std::get_if<Photo>(&*object) : nullptr;
    if (photo != nullptr && !blobs_.has(photo->contentHash))
      faults_.push_back(
          fmt::format("The picture {}, named in the history, is missing.", photo->contentHash));
  }

  HistoryTable history_;
  BlobTable blobs_;
  const Yard& yard_;
  FaultList& faults_;
  std::int64_t nextId_ = 0;
  std::set<std::int64_t> inspected_;
};

}  // namespace

std::vector<std::string> faultsOf(SQLite::Database& database, const Yard& yard) {
  FaultList faults;
  auto attempt = [&](auto&& examine) {
    try {
      examine();
    } catch (const std::runtime_error& error) {
      faults.push_back(fmt::format("The file cannot be read: {}", error.what()));
    }
  };
  const SQLite::Transaction oneMoment(database);
  attempt([&] { addPages(database, faults); });
  attempt([&] { addSchema(database, faults); });
  attempt([&] { addReferences(database, faults); });
  attempt([&] { addRows(database, yard, faults); });
  attempt([&] { addBlobs(database, faults); });
  attempt([&] { Replay(database, yard, faults).run(); });
  return faults;
}

}  // namespace tussock
