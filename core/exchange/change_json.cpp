// SPDX-License-Identifier: MIT
#include "core/exchange/change_json.h"

#include <array>
#include <utility>

#include <fmt/format.h>

#include "core/exchange/field_json.h"
#include "core/model/fields.h"

namespace tussock {

namespace {

template <class T>
std::string placeOf(const T& object, std::string_view field) {
  return fmt::format("{} {}, field {}", kKind<T>, object.id.value(), field);
}

template <class T>
Json fieldsToJson(const T& object) {
  Json json = Json::object();
  visitFields(object, [&](std::string_view name, const auto& field) {
    try {
      json[std::string(name)] = toJson(field);
    } catch (const FormatError& error) {
      throw FormatError(fmt::format("{}: {}", placeOf(object, name), error.what()));
    }
  });
  return json;
}

template <class T>
T fieldsFromJson(const Json& json, std::int64_t id) {
  T object;
  object.id = Id<T>(id);
  if (!json.is_object()) throw FormatError(fmt::format("{} {}: expected an object", kKind<T>, id));
  std::size_t known = 0;
  visitFields(object, [&](std::string_view name, auto& field) {
    const auto at = json.find(name);
    if (at == json.end() && isLaterField(name)) return;
    if (at == json.end()) throw FormatError(placeOf(object, name) + " is missing");
    try {
      fromJson(*at, field);
    } catch (const FormatError& error) {
      throw FormatError(fmt::format("{}: {}", placeOf(object, name), error.what()));
    }
    ++known;
  });
  if (known != json.size())
    throw FormatError(fmt::format("{} {} has fields that are not known here", kKind<T>, id));
  return object;
}

Json objectToJson(const Object& object) {
  return std::visit([](const auto& o) { return fieldsToJson(o); }, object);
}

using ObjectReader = Object (*)(const Json&, std::int64_t);

template <class T>
Object readAs(const Json& json, std::int64_t id) {
  return fieldsFromJson<T>(json, id);
}

template <std::size_t... I>
ObjectReader readerFor(std::string_view kind, std::index_sequence<I...>) {
  ObjectReader reader = nullptr;
  ((kKind<std::variant_alternative_t<I, Object>> == kind
        ? void(reader = &readAs<std::variant_alternative_t<I, Object>>)
        : void()),
   ...);
  if (reader == nullptr)
    throw FormatError(fmt::format("\"{}\" is no kind of object known here", kind));
  return reader;
}

Json changeToJson(const Change& change) {
  if (!change.before && !change.after) throw FormatError("A change has neither before nor after.");
  const ObjectRef subject = subjectOf(change);
  if (change.before && refTo(*change.before) != subject)
    throw FormatError("A change is of two different objects.");
  Json json{{"kind", kindOf(subject)}, {"id", subject.id}};
  if (change.before) json["before"] = objectToJson(*change.before);
  if (change.after) json["after"] = objectToJson(*change.after);
  return json;
}

const Json& memberOf(const Json& json, const char* name) {
  if (!json.is_object() || !json.contains(name))
    throw FormatError(fmt::format("\"{}\" is missing", name));
  return json.at(name);
}

Change changeFromJson(const Json& json) {
  const auto kind = textFromJson(memberOf(json, "kind"));
  const auto id = wholeFromJson(memberOf(json, "id"));
  const ObjectReader read =
      readerFor(kind, std::make_index_sequence<std::variant_size_v<Object>>{});
  Change change;
  if (json.contains("before")) change.before = read(json.at("before"), id);
  if (json.contains("after")) change.after = read(json.at("after"), id);
  const std::size_t known = 2U + (change.before ? 1U : 0U) + (change.after ? 1U : 0U);
  if (known == 2 || json.size() != known)
    throw FormatError(fmt::format("{} {}: expected before, after or both", kind, id));
  return change;
}

}  // namespace

std::string changeSetToJson(const ChangeSet& edit) {
  Json changes = Json::array();
  for (const Change& change : edit.changes) changes.push_back(changeToJson(change));
  return jsonText(Json{{"label", edit.label}, {"changes", std::move(changes)}});
}

ChangeSet changeSetFromJson(std::string_view text) {
  const Json json = parseJson(text);
  ChangeSet edit{textFromJson(memberOf(json, "label")), {}};
  const Json& changes = memberOf(json, "changes");
  if (json.size() != 2 || !changes.is_array())
    throw FormatError("Expected a label and an array of changes, and nothing else.");
  for (const Json& change : changes) edit.changes.push_back(changeFromJson(change));
  return edit;
}

}  // namespace tussock
