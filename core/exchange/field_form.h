// SPDX-License-Identifier: MIT
// The plain forms in which fields of objects are written to files: real numbers (metres, radians),
// whole numbers and text. Change sets and the yard file both use them, so that they cannot differ.
#pragma once

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/model/yard.h"

namespace tussock {

template <class T>
concept NumberField = std::same_as<T, double> || std::same_as<T, Length> || std::same_as<T, Angle>;

[[nodiscard]] inline double numberOf(double value) {
  return value;
}
[[nodiscard]] inline double numberOf(Length value) {
  return value.metres();
}
[[nodiscard]] inline double numberOf(Angle value) {
  return value.radians();
}
inline void setNumber(double& field, double number) {
  field = number;
}
inline void setNumber(Length& field, double number) {
  field = Length::metres(number);
}
inline void setNumber(Angle& field, double number) {
  field = Angle::radians(number);
}

template <class T>
inline constexpr bool kIsId = false;
template <class T>
inline constexpr bool kIsId<Id<T>> = true;
template <class T>
concept WholeField = std::same_as<T, int> || kIsId<T>;

[[nodiscard]] inline std::int64_t wholeOf(int value) {
  return value;
}
template <class T>
[[nodiscard]] std::int64_t wholeOf(Id<T> value) {
  return value.value();
}
// False when the field cannot hold it.
[[nodiscard]] bool setWhole(int& field, std::int64_t number);
template <class T>
[[nodiscard]] bool setWhole(Id<T>& field, std::int64_t number) {
  field = Id<T>(number);
  return number >= 0;
}

template <class T>
concept TextField =
    std::same_as<T, std::string> || std::same_as<T, Polygon> || std::same_as<T, Polyline> ||
    std::same_as<T, MonthDay> || std::same_as<T, Date> || std::same_as<T, Viewing> || NamedEnum<T>;

[[nodiscard]] std::string textOf(const std::string& field);
[[nodiscard]] std::string textOf(const Polygon& field);   // well-known text
[[nodiscard]] std::string textOf(const Polyline& field);  // well-known text
[[nodiscard]] std::string textOf(MonthDay field);         // 04-20
[[nodiscard]] std::string textOf(Date field);             // 2027-04-14
[[nodiscard]] std::string textOf(const Viewing& field);
template <NamedEnum E>
[[nodiscard]] std::string textOf(E field) {
  return std::string(wordOf(field));
}
// False, and the field as it was, when the text does not say such a thing.
[[nodiscard]] bool setText(std::string& field, std::string_view text);
[[nodiscard]] bool setText(Polygon& field, std::string_view text);
[[nodiscard]] bool setText(Polyline& field, std::string_view text);
[[nodiscard]] bool setText(MonthDay& field, std::string_view text);
[[nodiscard]] bool setText(Date& field, std::string_view text);
[[nodiscard]] bool setText(Viewing& field, std::string_view text);
template <NamedEnum E>
[[nodiscard]] bool setText(E& field, std::string_view text) {
  const auto value = fromWord<E>(text);
  if (value) field = *value;
  return value.has_value();
}

}  // namespace tussock
