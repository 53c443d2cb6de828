// SPDX-License-Identifier: MIT
#include <algorithm>

#include <fmt/format.h>

#include "core/exchange/geojson.h"
#include "core/exchange/geojson_import.h"

namespace tussock {

namespace {

// Deeper than any GeoJSON needs; deeper still would exhaust the stack when written again.
constexpr int kDeepest = 64;

// Lines count from 1; `byte` is where reading stopped, counted from 1.
std::ptrdiff_t lineAt(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, byte == 0 ? 0 : byte - 1);
  return 1 + std::count(before.begin(), before.end(), '\n');
}

Json parsed(std::string_view text, std::string_view fileName) {
  auto refuseDepth = [](int depth, Json::parse_event_t, Json&) {
    if (depth > kDeepest) throw FormatError("it is nested too deeply");
    return true;
  };
  try {
    return Json::parse(text, refuseDepth);
  } catch (const Json::parse_error& error) {
    throw FormatError(
        fmt::format("{} is not JSON: line {} cannot be read. Export it again from "
                    "where it came from.",
                    fileName, lineAt(text, error.byte)));
  } catch (const Json::out_of_range&) {
    throw FormatError(fmt::format("{} holds a number too large to be a place.", fileName));
  } catch (const FormatError& error) {
    throw FormatError(fmt::format("{} cannot be read: {}.", fileName, error.what()));
  }
}

const Json& memberNamed(const Json& json, const char* name) {
  static const Json null;
  const auto at = json.find(name);
  return at == json.end() ? null : *at;
}

std::string kindOf(const Json& properties) {
  if (!properties.is_object()) return {};
  const Json& kind = memberNamed(properties, "kind");
  return kind.is_string() ? kind.get<std::string>() : std::string{};
}

// The features of a collection, or the one that the file is.
const Json& featuresOf(const Json& root, const Json& alone, std::string_view fileName) {
  const std::string type = geometryType(root);
  if (type == "Feature") return alone;
  if (type != "FeatureCollection")
    throw FormatError(
        fmt::format("{} is not a GeoJSON FeatureCollection or Feature; its \"type\" is {}.",
                    fileName, type.empty() ? "missing" : type));
  const Json& features = memberNamed(root, "features");
  if (!features.is_array())
    throw FormatError(fmt::format("{}: \"features\" is not a list.", fileName));
  return features;
}

}  // namespace

GeoJsonImport importGeoJson(const Yard& yard, const Catalogue& facts, std::string_view json,
                            std::string_view fileName, IdSource& ids) {
  const Json root = parsed(json, fileName);
  const Json alone = Json::array({root});
  const Json& features = featuresOf(root, alone, fileName);
  GeoImport import(yard, facts, ids);
  std::vector<std::string> notFeatures;
  for (std::size_t i = 0; i < features.size(); ++i) {
    const Json& feature = features[i];
    if (geometryType(feature) != "Feature") {
      notFeatures.push_back(fmt::format("Feature {}: left out: it is no GeoJSON Feature.", i + 1));
      continue;
    }
    const Json& properties = memberNamed(feature, "properties");
    import.read({i + 1, feature, memberNamed(feature, "geometry"), properties, kindOf(properties)});
  }
  if (&features != &alone) import.takeMembers(root);
  GeoJsonImport result = import.finish(fmt::format("Import {}", fileName));
  result.leftOut += notFeatures.size();
  result.warnings.insert(result.warnings.begin(), notFeatures.begin(), notFeatures.end());
  return result;
}

}  // namespace tussock
