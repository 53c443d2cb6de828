// SPDX-License-Identifier: MIT
#include "core/exchange/geojson_properties.h"

#include <fmt/format.h>

namespace tussock {

namespace {

double numberWithin(const Json& json, Limits limits) {
  const double value = numberFromJson(json);
  if (value < limits.least || value > limits.most)
    throw FormatError(fmt::format("expected {:g} to {:g}", limits.least, limits.most));
  return value;
}

// Enough of a value to find it by.
std::string shown(const Json& json) {
  constexpr std::size_t kLongest = 40;
  std::string text = json.dump(-1, ' ', true, Json::error_handler_t::replace);
  if (text.size() > kLongest) text = text.substr(0, kLongest) + "...";
  return text;
}

}  // namespace

void readProperty(const Json& json, Length& field, Limits limits) {
  field = Length::metres(numberWithin(json, limits));
}

void readProperty(const Json& json, double& field, Limits limits) {
  field = numberWithin(json, limits);
}

void readProperty(const Json& json, Angle& field, Limits limits) {
  field = Angle::degrees(numberWithin(json, limits));
}

void readProperty(const Json& json, std::string& field, Limits) {
  field = json.is_number() ? json.dump() : textFromJson(json);
}

const Json* PropertyReader::take(const char* key) {
  if (!has(key)) return nullptr;
  known_.insert(key);
  return &*properties_.find(key);
}

bool PropertyReader::has(const char* key) const {
  return properties_.is_object() && properties_.contains(key);
}

std::string PropertyReader::rest() const {
  Json rest = Json::object();
  if (properties_.is_object())
    for (const auto& [key, value] : properties_.items())
      if (!known_.contains(key)) rest[key] = value;
  return rest.empty() ? std::string{} : jsonText(rest);
}

void PropertyReader::refuse(const char* key, const Json& json, std::string_view reason) {
  refused_.push_back(
      fmt::format("{} is {}: {}. The usual value is taken", key, shown(json), reason));
}

Json objectFrom(const std::string& text) {
  if (text.empty()) return Json::object();
  Json json = Json::parse(text, nullptr, false);
  return json.is_object() ? json : Json::object();
}

}  // namespace tussock
