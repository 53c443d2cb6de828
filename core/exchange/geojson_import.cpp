// SPDX-License-Identifier: MIT
#include "core/exchange/geojson_import.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

namespace tussock {

namespace {

template <class T>
void readShape(ShapeReader& reader, const Json& geometry, T& object) {
  if constexpr (std::is_same_v<T, Barrier>) {
    if (geometryType(geometry) == "Polygon") return reader.read(geometry, object.footprint);
    reader.read(geometry, object.line);
  } else if constexpr (std::is_same_v<T, Building>) {
    reader.read(geometry, object.footprint);
  } else if constexpr (std::is_same_v<T, BuriedLine>) {
    reader.read(geometry, object.line);
  } else if constexpr (requires { object.at; }) {
    reader.read(geometry, object.at);
  } else {
    reader.read(geometry, object.outline);
  }
}

// Its outline as ground, if it has one.
template <class T>
Polygon* groundMember(T& object) {
  if constexpr (requires { object.footprint; })
    return &object.footprint;
  else if constexpr (requires { object.outline; })
    return &object.outline;
  else
    return nullptr;
}

template <class T>
void setUsual(const Settings&, T&) {}
void setUsual(const Settings& settings, Tree& tree) {
  const LeafDays leaves = usualLeafDays(settings);
  tree.leafOn = leaves.on, tree.leafOff = leaves.off;
}

template <class T>
void readOwn(PropertyReader&, T&) {}

// A flat roof may be given by one height.
void readOwn(PropertyReader& properties, Building& building) {
  if (!properties.has("eave_m")) properties("height_m", building.eave);
  const bool ridgeGiven = properties.has("ridge_m") && building.roof != Roof::Flat;
  building.ridge = ridgeGiven ? std::max(building.ridge, building.eave) : building.eave;
}

}  // namespace

std::string FeatureIn::label() const {
  std::string what = kind;
  if (properties.is_object() && properties.contains("name") && properties["name"].is_string())
    what += (what.empty() ? "" : " ") + properties["name"].get<std::string>();
  return what.empty() ? fmt::format("Feature {}", number)
                      : fmt::format("Feature {} ({})", number, what);
}

std::string withMembers(const std::string& foreign, const Json& feature) {
  Json members = Json::object();
  for (const auto& [key, value] : feature.items())
    if (key != "type" && key != "geometry" && key != "properties" && key != "bbox")
      members[key] = value;
  if (members.empty()) return foreign;
  Json all = objectFrom(foreign);
  all[kMembersKey] = std::move(members);
  return jsonText(all);
}

GeoImport::GeoImport(const Yard& yard, const Catalogue& facts, IdSource& ids)
    : draft_(yard),
      frame_(yard.settings.latitude, yard.settings.longitude),
      facts_(facts),
      ids_(ids) {}

GeoImport::Read GeoImport::readerOf(std::string_view kind) {
  static const std::map<std::string_view, Read> readers{
      {kFeatureKind<LotLine>, &GeoImport::readObjects<LotLine>},
      {kFeatureKind<Building>, &GeoImport::readObjects<Building>},
      {kFeatureKind<Barrier>, &GeoImport::readObjects<Barrier>},
      {kFeatureKind<Tree>, &GeoImport::readObjects<Tree>},
      {kFeatureKind<Paving>, &GeoImport::readObjects<Paving>},
      {kFeatureKind<SteppingPlace>, &GeoImport::readObjects<SteppingPlace>},
      {kFeatureKind<WaterPoint>, &GeoImport::readObjects<WaterPoint>},
      {kFeatureKind<HeightLimit>, &GeoImport::readObjects<HeightLimit>},
      {kFeatureKind<BuriedLine>, &GeoImport::readObjects<BuriedLine>},
      {kFeatureKind<Bed>, &GeoImport::readObjects<Bed>},
      {kFeatureKind<Patch>, &GeoImport::readObjects<Patch>},
      {kFeatureKind<Drift>, &GeoImport::readDrift},
      {kPlantKind, &GeoImport::readPlant},
      {kSpeciesKind, &GeoImport::readSpecies}};
  const auto at = readers.find(kind);
  return at == readers.end() ? &GeoImport::keep : at->second;
}

void GeoImport::read(const FeatureIn& feature) {
  try {
    (this->*readerOf(feature.kind))(feature);
  } catch (const FormatError& error) {
    warn(feature, fmt::format("left out: {}", error.what()));
    ++leftOut_;
  }
}

template <class T>
void GeoImport::readObjects(const FeatureIn& feature) {
  for (const Json& geometry : singleGeometries(feature.geometry)) {
    T object;
    setUsual(draft_.yard().settings, object);
    PropertyReader properties(feature.properties);
    properties.take("kind");
    visitProperties(object, properties);
    readOwn(properties, object);
    ShapeReader shapes{frame_, {}};
    readShape(shapes, geometry, object);
    object.id = ids_.take<T>();
    object.foreign = withMembers(properties.rest(), feature.json);
    warnAll(feature, properties.refused());
    warnAll(feature, shapes.mended);
    putPieces(feature, object, shapes.furtherPieces);
    draft_.put(std::move(object));
  }
}

// The further pieces of what fell apart are things of their own, numbered behind the name.
template <class T>
void GeoImport::putPieces(const FeatureIn& feature, const T& first,
                          std::vector<Polygon>& furtherPieces) {
  if (furtherPieces.empty()) return;
  warn(feature,
       fmt::format("it fell into {} pieces; each came in by itself, numbered behind its name",
                   furtherPieces.size() + 1));
  for (std::size_t i = 0; i < furtherPieces.size(); ++i) {
    T piece = first;
    piece.id = ids_.take<T>();
    if (Polygon* ground = groundMember(piece)) *ground = std::move(furtherPieces[i]);
    if constexpr (requires { piece.name; })
      if (!piece.name.empty()) piece.name += fmt::format(" {}", i + 2);
    draft_.put(std::move(piece));
  }
}

void GeoImport::keep(const FeatureIn& feature) {
  if (!feature.geometry.is_null() && geometryType(feature.geometry).empty())
    throw FormatError("its geometry has no type");
  const std::string text = jsonText(feature.json);
  for (const ForeignFeature& kept : draft_.yard().foreignFeatures)
    if (kept.json == text) return;
  draft_.put(ForeignFeature{ids_.take<ForeignFeature>(), text});
}

void GeoImport::takeMembers(const Json& root) {
  Settings settings = draft_.yard().settings;
  Json kept = objectFrom(settings.foreign);
  for (const auto& [key, value] : root.items())
    if (key != "type" && key != "features" && key != "bbox") kept[key] = value;
  if (kept.empty()) return;
  settings.foreign = jsonText(kept);
  draft_.put(std::move(settings));
}

GeoJsonImport GeoImport::finish(std::string label) {
  plantDrifts();
  return {draft_.finish(std::move(label)), std::move(warnings_), leftOut_};
}

void GeoImport::warn(const FeatureIn& feature, std::string_view what) {
  warnings_.push_back(fmt::format("{}: {}.", feature.label(), what));
}

void GeoImport::warnAll(const FeatureIn& feature, const std::vector<std::string>& what) {
  for (const std::string& one : what) warn(feature, one);
}

}  // namespace tussock
