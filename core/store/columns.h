// SPDX-License-Identifier: MIT
// From the fields of an object to the columns of its table, the one place where that is decided.
// Every field is a column of its name, but a Point is two (name_x_m, name_y_m) and the plants of a
// drift are rows of their own table.
#pragma once

#include <string>
#include <vector>

#include <fmt/format.h>
#include <SQLiteCpp/SQLiteCpp.h>

#include "core/catalog/table.h"
#include "core/exchange/field_json.h"
#include "core/model/fields.h"

namespace tussock {

class ColumnNamer {
 public:
  explicit ColumnNamer(std::vector<std::string>& names) : names_(names) {}
  void operator()(std::string_view name, const Point&) const {
    names_.push_back(fmt::format("{}_x_m", name));
    names_.push_back(fmt::format("{}_y_m", name));
  }
  void operator()(std::string_view, const std::vector<Plant>&) const {}
  void operator()(std::string_view name, const auto&) const { names_.emplace_back(name); }

 private:
  std::vector<std::string>& names_;
};

template <class T>
[[nodiscard]] std::vector<std::string> columnsOf() {  // id first
  std::vector<std::string> names{"id"};
  const T object{};
  visitFields(object, ColumnNamer(names));
  return names;
}

// Binds an object's fields to the parameters of a statement, one after the other.
class ColumnWriter {
 public:
  explicit ColumnWriter(SQLite::Statement& statement) : statement_(statement) {}

  template <class T>
  void write(const T& object) {
    put(object.id);
    visitFields(object, [this](std::string_view, const auto& field) { this->put(field); });
  }

 private:
  void put(const NumberField auto& field) { statement_.bind(next_++, numberOf(field)); }
  void put(const WholeField auto& field) { statement_.bind(next_++, wholeOf(field)); }
  void put(bool field) { statement_.bind(next_++, field ? 1 : 0); }
  void put(const TextField auto& field) { statement_.bind(next_++, textOf(field)); }
  void put(Point field) { put(field.x), put(field.y); }
  void put(const std::vector<Plant>&) {}
  template <class T>
  void put(const std::vector<T>& list) {
    statement_.bind(next_++, jsonText(toJson(list)));
  }
  template <class T>
  void put(const std::optional<T>& field) {
    if (field) return put(*field);
    statement_.bind(next_++);
  }

  SQLite::Statement& statement_;
  int next_ = 1;
};

// Reads an object back from a row; throws FormatError, naming table, id and field.
class ColumnReader {
 public:
  explicit ColumnReader(SQLite::Statement& row) : row_(row) {}

  template <class T>
  void read(T& object) {
    take(object.id);
    visitFields(object, [&](std::string_view name, auto& field) {
      try {
        take(field);
      } catch (const FormatError& error) {
        throw FormatError(
            fmt::format("{} {}, {}: {}", kKind<T>, object.id.value(), name, error.what()));
      }
    });
  }

 private:
  void take(NumberField auto& field) {
    const auto column = row_.getColumn(next_++);
    if (!column.isFloat()) throw FormatError("expected a number");
    setNumber(field, column.getDouble());
  }
  void take(WholeField auto& field) {
    const auto column = row_.getColumn(next_++);
    if (!column.isInteger() || !setWhole(field, column.getInt64()))
      throw FormatError("expected a whole number");
  }
  void take(bool& field) {
    const auto column = row_.getColumn(next_++);
    if (!column.isInteger()) throw FormatError("expected 0 or 1");
    field = column.getInt64() != 0;
  }
  void take(TextField auto& field) {
    const std::string text = takeText();
    if (!setText(field, text)) throw FormatError("\"" + text + "\" cannot be read");
  }
  void take(Point& field) { take(field.x), take(field.y); }
  void take(std::vector<Plant>&) {}
  template <class T>
  void take(std::vector<T>& list) {
    fromJson(parseJson(takeText()), list);
  }
  template <class T>
  void take(std::optional<T>& field) {
    field.reset();
    if (!row_.getColumn(next_).isNull()) return take(field.emplace());
    ++next_;
  }
  std::string takeText() {
    const auto column = row_.getColumn(next_++);
    if (!column.isText()) throw FormatError("expected text");
    std::string text = column.getString();
    if (!isUtf8(text)) throw FormatError("the text is not UTF-8");
    return text;
  }

  SQLite::Statement& row_;
  int next_ = 0;
};

}  // namespace tussock
