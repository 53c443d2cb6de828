// SPDX-License-Identifier: MIT
// One field of an object as JSON and back. Numbers are written in a form that reads back to the
// same double; text that is not UTF-8 and numbers that are not finite are refused.
#pragma once

#include <cmath>
#include <optional>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/exchange/change_json.h"
#include "core/exchange/field_form.h"

namespace tussock {

using Json = nlohmann::ordered_json;

template <NumberField T>
[[nodiscard]] Json toJson(const T& field) {
  const double number = numberOf(field);
  if (!std::isfinite(number)) throw FormatError("the number is not finite");
  return number;
}
[[nodiscard]] inline Json toJson(bool field) {
  return field;
}
template <WholeField T>
[[nodiscard]] Json toJson(const T& field) {
  return wholeOf(field);
}
template <TextField T>
[[nodiscard]] Json toJson(const T& field) {
  return textOf(field);
}
[[nodiscard]] Json toJson(Point field);                      // [x, y]
[[nodiscard]] Json toJson(const std::vector<Plant>& field);  // [[id, x, y], ...]
[[nodiscard]] Json toJson(const std::vector<ListedSpecies>& field);
[[nodiscard]] Json toJson(const std::vector<ThresholdOverride>& field);
[[nodiscard]] Json toJson(const std::vector<SkylinePoint>& field);
[[nodiscard]] Json toJson(const std::vector<OwnFact>& field);
[[nodiscard]] Json toJson(const std::vector<KeptDrift>& field);
template <class T>
[[nodiscard]] Json toJson(const std::optional<T>& field) {
  return field ? toJson(*field) : Json(nullptr);
}

// These throw FormatError, saying what was expected.
void fromJson(const Json& json, bool& field);
void fromJson(const Json& json, Point& field);
void fromJson(const Json& json, std::vector<Plant>& field);
void fromJson(const Json& json, std::vector<ListedSpecies>& field);
void fromJson(const Json& json, std::vector<ThresholdOverride>& field);
void fromJson(const Json& json, std::vector<SkylinePoint>& field);
void fromJson(const Json& json, std::vector<OwnFact>& field);
void fromJson(const Json& json, std::vector<KeptDrift>& field);
[[nodiscard]] double numberFromJson(const Json& json);
[[nodiscard]] std::int64_t wholeFromJson(const Json& json);
[[nodiscard]] const std::string& textFromJson(const Json& json);

template <NumberField T>
void fromJson(const Json& json, T& field) {
  setNumber(field, numberFromJson(json));
}
template <WholeField T>
void fromJson(const Json& json, T& field) {
  if (!setWhole(field, wholeFromJson(json))) throw FormatError("the whole number is out of range");
}
template <TextField T>
void fromJson(const Json& json, T& field) {
  const std::string& text = textFromJson(json);
  if (!setText(field, text)) throw FormatError("\"" + text + "\" cannot be read");
}
template <class T>
void fromJson(const Json& json, std::optional<T>& field) {
  field.reset();
  if (!json.is_null()) fromJson(json, field.emplace());
}

// The JSON text of a list, as a column of the yard file keeps it. Both throw FormatError.
[[nodiscard]] std::string jsonText(const Json& json);
[[nodiscard]] Json parseJson(std::string_view text);

}  // namespace tussock
