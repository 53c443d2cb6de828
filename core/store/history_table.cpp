// SPDX-License-Identifier: MIT
#include "core/store/history_table.h"

#include <chrono>

#include <fmt/chrono.h>

#include "core/catalog/table.h"
#include "core/exchange/change_json.h"

namespace tussock {

namespace {

const std::string kEntry = "SELECT number, label, time_utc, state FROM history";

HistoryEntry entryFrom(SQLite::Statement& row) {
  for (const int column : {1, 2, 3})
    if (!isUtf8(row.getColumn(column).getString()))
      throw FormatError(
          fmt::format("history {}: the text is not UTF-8", row.getColumn(0).getInt64()));
  const std::string state = row.getColumn(3).getString();
  if (state != "done" && state != "undone")
    throw FormatError("history: \"" + state + "\" is neither done nor undone");
  return {row.getColumn(0).getInt64(), row.getColumn(1).getString(), row.getColumn(2).getString(),
          state == "undone"};
}

std::string now() {
  const auto seconds = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}",
                     fmt::gmtime(std::chrono::system_clock::to_time_t(seconds)));
}

}  // namespace

std::optional<HistoryEntry> HistoryTable::lastDone() const {
  SQLite::Statement row(database_, kEntry + " WHERE state = 'done' ORDER BY number DESC LIMIT 1");
  return row.executeStep() ? std::optional(entryFrom(row)) : std::nullopt;
}

std::optional<HistoryEntry> HistoryTable::firstUndone() const {
  const auto done = lastDone();  // found from the end, without reading through the whole history
  SQLite::Statement row(database_, kEntry + " WHERE number > ? ORDER BY number LIMIT 1");
  row.bind(1, done ? done->number : std::int64_t{0});
  return row.executeStep() ? std::optional(entryFrom(row)) : std::nullopt;
}

std::vector<HistoryEntry> HistoryTable::entries() const {
  std::vector<HistoryEntry> result;
  SQLite::Statement rows(database_, kEntry + " ORDER BY number");
  while (rows.executeStep()) result.push_back(entryFrom(rows));
  return result;
}

ChangeSet HistoryTable::edit(std::int64_t number) const {
  SQLite::Statement row(database_, "SELECT change_json FROM history WHERE number = ?");
  row.bind(1, number);
  if (!row.executeStep()) throw FormatError("a history entry is missing");
  return changeSetFromJson(row.getColumn(0).getString());
}

void HistoryTable::append(const std::string& label, const std::string& changeJson) {
  const auto done = lastDone();
  const std::int64_t last = done ? done->number : 0;
  drop(last + 1);
  SQLite::Statement insert(database_,
                           "INSERT INTO history (number, label, time_utc, state, change_json)"
                           " VALUES (?, ?, ?, 'done', ?)");
  insert.bind(1, last + 1);
  insert.bind(2, label);
  insert.bind(3, now());
  insert.bindNoCopy(4, changeJson);
  insert.exec();
}

void HistoryTable::drop(std::int64_t from) {
  SQLite::Statement drop(database_, "DELETE FROM history WHERE number >= ?");
  drop.bind(1, from);
  drop.exec();
}

void HistoryTable::clear() {
  database_.exec("DELETE FROM history");
}

void HistoryTable::mark(std::int64_t number, State state) {
  SQLite::Statement update(database_, "UPDATE history SET state = ? WHERE number = ?");
  update.bind(1, state == State::Done ? "done" : "undone");
  update.bind(2, number);
  update.exec();
}

}  // namespace tussock
