// SPDX-License-Identifier: MIT
#include "core/exchange/field_json.h"

#include <fmt/format.h>

namespace tussock {

namespace {

const Json& arrayOf(const Json& json, std::size_t size) {
  if (!json.is_array() || json.size() != size)
    throw FormatError(fmt::format("expected an array of {}", size));
  return json;
}

const Json& listOf(const Json& json) {
  if (!json.is_array()) throw FormatError("expected an array");
  return json;
}

// A member of a list entry that has so many; all must be there and nothing else.
const Json& member(const Json& entry, const char* name, std::size_t size = 2) {
  if (!entry.is_object() || entry.size() != size || !entry.contains(name))
    throw FormatError(
        fmt::format("expected list entries with {} members, \"{}\" one of them", size, name));
  return entry.at(name);
}

// Every field of a kept drift but its places, which are a list of pairs.
template <class D>
void visitKeptDrift(D& drift, auto&& f) {
  f("species", drift.species);
  f("layer", drift.layer);
  f("spacing_m", drift.spacing);
  f("size", drift.size);
  f("pattern", drift.pattern);
  f("axis_rad", drift.axis);
  f("stretch", drift.stretch);
}
constexpr std::size_t kKeptDriftMembers = 8;

}  // namespace

Json toJson(Point field) {
  return Json::array({toJson(field.x), toJson(field.y)});
}

Json toJson(const std::vector<Plant>& field) {
  Json list = Json::array();
  for (const Plant& plant : field)
    list.push_back(Json::array({toJson(plant.id), toJson(plant.at.x), toJson(plant.at.y)}));
  return list;
}

Json toJson(const std::vector<ListedSpecies>& field) {
  Json list = Json::array();
  for (const ListedSpecies& entry : field) {
    Json one{{"species", entry.species}, {"share", toJson(entry.share)}};
    if (entry.matrix) one["matrix"] = true;
    list.push_back(std::move(one));
  }
  return list;
}

Json toJson(const std::vector<ThresholdOverride>& field) {
  Json list = Json::array();
  for (const ThresholdOverride& entry : field)
    list.push_back(Json{{"threshold", entry.threshold}, {"value", toJson(entry.value)}});
  return list;
}

Json toJson(const std::vector<SkylinePoint>& field) {
  Json list = Json::array();
  for (const SkylinePoint& entry : field)
    list.push_back(
        Json{{"azimuth_rad", toJson(entry.azimuth)}, {"elevation_rad", toJson(entry.elevation)}});
  return list;
}

Json toJson(const std::vector<OwnFact>& field) {
  Json list = Json::array();
  for (const OwnFact& entry : field)
    list.push_back(Json{{"column", entry.column}, {"value", entry.value}});
  return list;
}

Json toJson(const std::vector<KeptDrift>& field) {
  Json list = Json::array();
  for (const KeptDrift& drift : field) {
    Json& entry = list.emplace_back(Json::object());
    visitKeptDrift(drift,
                   [&](const char* name, const auto& value) { entry[name] = toJson(value); });
    Json& places = entry["places"] = Json::array();
    for (const Point place : drift.places) places.push_back(toJson(place));
  }
  return list;
}

double numberFromJson(const Json& json) {
  if (!json.is_number()) throw FormatError("expected a number");
  const auto number = json.get<double>();
  if (!std::isfinite(number)) throw FormatError("the number is not finite");
  return number;
}

std::int64_t wholeFromJson(const Json& json) {
  if (!json.is_number_integer()) throw FormatError("expected a whole number");
  if (json.is_number_unsigned() && !std::in_range<std::int64_t>(json.get<std::uint64_t>()))
    throw FormatError("the whole number is out of range");
  return json.get<std::int64_t>();
}

const std::string& textFromJson(const Json& json) {
  if (!json.is_string()) throw FormatError("expected text");
  return json.get_ref<const std::string&>();
}

void fromJson(const Json& json, bool& field) {
  if (!json.is_boolean()) throw FormatError("expected true or false");
  field = json.get<bool>();
}

void fromJson(const Json& json, Point& field) {
  const Json& pair = arrayOf(json, 2);
  field = {numberFromJson(pair[0]), numberFromJson(pair[1])};
}

void fromJson(const Json& json, std::vector<Plant>& field) {
  field.clear();
  field.reserve(listOf(json).size());
  for (const Json& entry : json) {
    Plant plant;
    fromJson(arrayOf(entry, 3)[0], plant.id);
    plant.at = {numberFromJson(entry[1]), numberFromJson(entry[2])};
    field.push_back(plant);
  }
}

void fromJson(const Json& json, std::vector<ListedSpecies>& field) {
  field.clear();
  for (const Json& entry : listOf(json)) {
    const std::size_t size = entry.contains("matrix") ? 3 : 2;  // named for a matrix plant only
    ListedSpecies one{textFromJson(member(entry, "species", size)),
                      numberFromJson(member(entry, "share", size))};
    if (size == 3) fromJson(entry.at("matrix"), one.matrix);
    field.push_back(std::move(one));
  }
}

void fromJson(const Json& json, std::vector<ThresholdOverride>& field) {
  field.clear();
  for (const Json& entry : listOf(json))
    field.push_back(
        {textFromJson(member(entry, "threshold")), numberFromJson(member(entry, "value"))});
}

void fromJson(const Json& json, std::vector<SkylinePoint>& field) {
  field.clear();
  for (const Json& entry : listOf(json)) {
    SkylinePoint& point = field.emplace_back();
    fromJson(member(entry, "azimuth_rad"), point.azimuth);
    fromJson(member(entry, "elevation_rad"), point.elevation);
  }
}

void fromJson(const Json& json, std::vector<OwnFact>& field) {
  field.clear();
  for (const Json& entry : listOf(json))
    field.push_back({textFromJson(member(entry, "column")), textFromJson(member(entry, "value"))});
}

void fromJson(const Json& json, std::vector<KeptDrift>& field) {
  field.clear();
  for (const Json& entry : listOf(json)) {
    KeptDrift& drift = field.emplace_back();
    visitKeptDrift(drift, [&](const char* name, auto& value) {
      fromJson(member(entry, name, kKeptDriftMembers), value);
    });
    for (const Json& place : listOf(member(entry, "places", kKeptDriftMembers)))
      fromJson(place, drift.places.emplace_back());
  }
}

std::string jsonText(const Json& json) {
  try {
    return json.dump();
  } catch (const Json::type_error&) {
    throw FormatError("A text is not UTF-8.");
  }
}

Json parseJson(std::string_view text) {
  try {
    return Json::parse(text);
  } catch (const Json::parse_error& error) {
    throw FormatError(fmt::format("Not JSON: it cannot be read from byte {} on.", error.byte));
  } catch (const Json::exception&) {
    throw FormatError("Not JSON: a number in it is too large.");
  }
}

}  // namespace tussock
