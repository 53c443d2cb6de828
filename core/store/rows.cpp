// SPDX-License-Identifier: MIT
#include "core/store/rows.h"

#include "core/store/plant_rows.h"

namespace tussock {

namespace {

template <std::size_t I>
using KindAt = std::variant_alternative_t<I, Object>;
using Kinds = std::make_index_sequence<std::variant_size_v<Object>>;

template <class T>
std::vector<T> readTable(SQLite::Database& database) {
  std::vector<T> objects;
  SQLite::Statement rows(database, selectSql<T>());
  while (rows.executeStep()) ColumnReader(rows).read(objects.emplace_back());
  return objects;
}

template <class T>
void readInto(SQLite::Database& database, Yard& yard) {
  std::vector<T> objects = readTable<T>(database);
  if constexpr (std::is_same_v<T, Settings>) {
    if (objects.size() != 1) throw FormatError("the settings row is missing");
    yard.settings = std::move(objects.front());
  } else {
    if constexpr (std::is_same_v<T, Drift>) readPlants(database, objects);
    collectionOf<T>(yard) = Collection<T>(std::move(objects));
  }
}

template <std::size_t... I>
void readAll(SQLite::Database& database, Yard& yard, std::index_sequence<I...>) {
  (readInto<KindAt<I>>(database, yard), ...);
}

const std::vector<Plant>& plantsOf(const std::optional<Object>& object) {
  static const std::vector<Plant> none;
  const Drift* drift = object ? std::get_if<Drift>(&*object) : nullptr;
  return drift != nullptr ? drift->plants : none;
}

template <class T>
void writeRow(Statements& statements, const std::string& sql, const T& object) {
  SQLite::Statement& statement = statements[sql];
  ColumnWriter(statement).write(object);
  changeOneRow(statement);
}

void writeObject(Statements& statements, const Change& change) {
  std::visit(
      [&](const auto& object) {
        using T = std::decay_t<decltype(object)>;
        if (!change.after) {
          SQLite::Statement& remove = statements[deleteSql<T>()];
          remove.bind(1, object.id.value());
          changeOneRow(remove);
        } else {
          writeRow(statements, change.before ? updateSql<T>() : insertSql<T>(), object);
        }
      },
      change.after ? *change.after : change.before.value());
}

}  // namespace

void changeOneRow(SQLite::Statement& statement) {
  if (statement.exec() != 1) throw FormatError("a row is not there: " + statement.getExpandedSQL());
}

Yard readYard(SQLite::Database& database) {
  Yard yard;
  readAll(database, yard, Kinds{});
  return yard;
}

void writeRows(SQLite::Database& database, const ChangeSet& edit) {
  Statements statements(database);
  for (const Change& change : edit.changes)
    removePlants(statements, plantsOf(change.before), plantsOf(change.after));
  for (const Change& change : edit.changes) writeObject(statements, change);
  for (const Change& change : edit.changes)
    if (const auto drift = idIf<Drift>(subjectOf(change)); drift && change.after)
      writePlants(statements, *drift, plantsOf(change.before), plantsOf(change.after));
}

void insertSettings(SQLite::Database& database, const Settings& settings) {
  Statements statements(database);
  writeRow(statements, insertSql<Settings>(), settings);
}

}  // namespace tussock
