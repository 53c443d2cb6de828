// SPDX-License-Identifier: MIT
// Properties of a GeoJSON feature to and from the fields of an object. What cannot be read leaves
// the field as it was and is told; what is not known is kept.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/exchange/field_json.h"
#include "core/exchange/geojson_fields.h"

namespace tussock {

class PropertyWriter {
 public:
  explicit PropertyWriter(Json& properties) : properties_(properties) {}

  template <class T>
  void operator()(const char* key, const T& field, Limits = {}) {
    properties_[key] = toJson(field);
  }
  void operator()(const char* key, Angle field, Limits = {}) { properties_[key] = field.degrees(); }
  template <class T>
  void operator()(const char* key, const std::optional<T>& field, Limits limits = {}) {
    if (field) (*this)(key, *field, limits);
  }

 private:
  Json& properties_;
};

// These throw FormatError, saying what was expected.
template <class T>
void readProperty(const Json& json, T& field, Limits) {
  fromJson(json, field);
}
void readProperty(const Json& json, Length& field, Limits limits);
void readProperty(const Json& json, double& field, Limits limits);
void readProperty(const Json& json, Angle& field, Limits limits);
void readProperty(const Json& json, std::string& field, Limits limits);  // numbers too
template <class T>
void readProperty(const Json& json, std::optional<T>& field, Limits limits) {
  T value{};
  readProperty(json, value, limits);
  field = std::move(value);
}

class PropertyReader {
 public:
  // `properties` is an object or null.
  explicit PropertyReader(const Json& properties) : properties_(properties) {}

  template <class T>
  void operator()(const char* key, T& field, Limits limits = {}) {
    const Json* json = take(key);
    if (json == nullptr || json->is_null()) return;
    try {
      T value = field;
      readProperty(*json, value, limits);
      field = std::move(value);
    } catch (const FormatError& error) {
      refuse(key, *json, error.what());
    }
  }
  // Null when there is none; then it counts as known.
  const Json* take(const char* key);
  [[nodiscard]] bool has(const char* key) const;
  // All that was not asked for, as the text of an object; empty when there is nothing.
  [[nodiscard]] std::string rest() const;
  [[nodiscard]] const std::vector<std::string>& refused() const { return refused_; }

 private:
  void refuse(const char* key, const Json& json, std::string_view reason);

  const Json& properties_;
  std::set<std::string, std::less<>> known_;
  std::vector<std::string> refused_;
};

// The text of a JSON object, or an empty object when it is none.
[[nodiscard]] Json objectFrom(const std::string& text);

}  // namespace tussock
