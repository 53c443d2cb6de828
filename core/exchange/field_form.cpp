// SPDX-License-Identifier: MIT
#include "core/exchange/field_form.h"

#include <optional>
#include <utility>

#include "core/geometry/wkt.h"

namespace tussock {

namespace {

template <class T>
bool take(T& field, std::optional<T> value) {
  if (value) field = std::move(*value);
  return value.has_value();
}

}  // namespace

bool setWhole(int& field, std::int64_t number) {
  if (!std::in_range<int>(number)) return false;
  field = static_cast<int>(number);
  return true;
}

std::string textOf(const std::string& field) {
  return field;
}
std::string textOf(const Polygon& field) {
  return toWkt(field);
}
std::string textOf(const Polyline& field) {
  return toWkt(field);
}
std::string textOf(MonthDay field) {
  return formatMonthDay(field);
}
std::string textOf(Date field) {
  return formatDate(field);
}
std::string textOf(const Viewing& field) {
  return formatViewing(field);
}

bool setText(std::string& field, std::string_view text) {
  field = text;
  return true;
}
bool setText(Polygon& field, std::string_view text) {
  return take(field, polygonFromWkt(text));
}
bool setText(Polyline& field, std::string_view text) {
  return take(field, polylineFromWkt(text));
}
bool setText(MonthDay& field, std::string_view text) {
  return take(field, parseMonthDay(text));
}
bool setText(Date& field, std::string_view text) {
  return take(field, parseDate(text));
}
bool setText(Viewing& field, std::string_view text) {
  return take(field, parseViewing(text));
}

}  // namespace tussock
