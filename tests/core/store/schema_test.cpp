// SPDX-License-Identifier: MIT
#include "core/store/schema.h"

#include <gmock/gmock.h>

#include "core/store/statements.h"

namespace tussock {
namespace {

SQLite::Database freshDatabase() {
  SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec(schemaSql());
  return database;
}

std::vector<std::string> askForTexts(SQLite::Database& database, const std::string& sql) {
  std::vector<std::string> result;
  SQLite::Statement rows(database, sql);
  while (rows.executeStep()) result.push_back(rows.getColumn(0).getString());
  return result;
}

// Calls f<T>() for every kind of object.
template <class F>
void forEachKind(F&& f) {
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    (f.template operator()<std::variant_alternative_t<I, Object>>(), ...);
  }
  (std::make_index_sequence<std::variant_size_v<Object>>{});
}

TEST(Schema, ColumnsAreTheFieldsInTheirOrder) {
  SQLite::Database database = freshDatabase();
  forEachKind([&]<class T>() {
    EXPECT_EQ(
        askForTexts(database, fmt::format("SELECT name FROM pragma_table_info('{}')", kKind<T>)),
        columnsOf<T>())
        << kKind<T>;
  });
}

TEST(Schema, EveryTableIsStrict) {
  SQLite::Database database = freshDatabase();
  EXPECT_THAT(askForTexts(database,
                          "SELECT name FROM pragma_table_list WHERE strict = 0 AND "
                          "name NOT LIKE 'sqlite_%'"),
              testing::IsEmpty());
  EXPECT_GT(askForTexts(database, "SELECT name FROM pragma_table_list WHERE strict").size(), 20u);
}

// A table's rule for a word column must let every word of the enumeration in.
TEST(Schema, TakesEveryWordOfEveryEnumeration) {
  SQLite::Database database = freshDatabase();
  int words = 0;
  forEachKind([&]<class T>() {
    T object;
    if constexpr (!std::is_same_v<T, Settings>) object.id = Id<T>(2);
    auto insert = [&] {
      database.exec(fmt::format("DELETE FROM {}", kKind<T>));
      SQLite::Statement statement(database, insertSql<T>());
      ColumnWriter(statement).write(object);
      EXPECT_EQ(statement.exec(), 1);
      ++words;
    };
    auto tryAll = [&](std::string_view, auto& field) {
      if constexpr (NamedEnum<std::decay_t<decltype(field)>>)
        for (const auto& value : EnumWords<std::decay_t<decltype(field)>>::values) {
          field = value.first;
          insert();
        }
    };
    if constexpr (!std::is_same_v<T, Photo>) visitFields(object, tryAll);
  });
  EXPECT_EQ(words, 2 + 2 + 3 + 3 + 3 + 4 + 5 + 4 + 3 + 5 + 5);
}

TEST(Schema, TakesOnlyFiniteNumbers) {
  SQLite::Database database = freshDatabase();
  database.exec("PRAGMA ignore_check_constraints = OFF");
  int columns = 0;
  forEachKind([&]<class T>() {
    T object;
    if constexpr (!std::is_same_v<T, Settings>) object.id = Id<T>(2);
    if constexpr (std::is_same_v<T, Photo>) object.contentHash = std::string(64, '0');
    SQLite::Statement insert(database, insertSql<T>());
    ColumnWriter(insert).write(object);
    insert.exec();
    for (const std::string& column : askForTexts(
             database,
             fmt::format("SELECT name FROM pragma_table_info('{}') WHERE type = 'REAL'", kKind<T>)))
      for (const char* value : {"9e999", "-9e999"}) {
        const std::string sql = fmt::format("UPDATE {} SET {} = {}", kKind<T>, column, value);
        EXPECT_THROW(database.exec(sql), SQLite::Exception) << sql;
        ++columns;
      }
  });
  EXPECT_GT(columns, 60);
}

}  // namespace
}  // namespace tussock
