// SPDX-License-Identifier: MIT
#include "core/catalog/plan_codes.h"
#include "core/exchange/geojson.h"
#include "core/exchange/geojson_import.h"
#include "core/exchange/geojson_properties.h"
#include "core/exchange/geojson_shapes.h"

namespace tussock {

namespace {

template <class T>
Json shapeOf(const T& object, const LocalFrame& frame) {
  if constexpr (std::is_same_v<T, Barrier>)
    return object.footprint.empty() ? geometryOf(object.line, frame)
                                    : geometryOf(object.footprint, frame);
  else if constexpr (std::is_same_v<T, Building>)
    return geometryOf(object.footprint, frame);
  else if constexpr (std::is_same_v<T, BuriedLine>)
    return geometryOf(object.line, frame);
  else if constexpr (requires { object.at; })
    return geometryOf(object.at, frame);
  else
    return geometryOf(object.outline, frame);
}

class Writer {
 public:
  explicit Writer(const Yard& yard)
      : yard_(yard), frame_(yard.settings.latitude, yard.settings.longitude) {}

  std::string write() {
    addAll<LotLine>(), addAll<Building>(), addAll<Barrier>(), addAll<Tree>(), addAll<Paving>();
    addAll<SteppingPlace>(), addAll<WaterPoint>(), addAll<HeightLimit>(), addAll<BuriedLine>();
    addAll<Bed>(), addAll<Patch>();
    for (const OwnSpecies& own : yard_.ownSpecies) addOwn(own);
    for (const Drift& drift : yard_.drifts) addDrift(drift);
    for (const ForeignFeature& kept : yard_.foreignFeatures)
      if (Json feature = objectFrom(kept.json); !feature.empty()) add(std::move(feature));
    Json root = {{"type", "FeatureCollection"}, {"features", std::move(features_)}};
    const Json members = objectFrom(yard_.settings.foreign);
    for (const auto& [key, value] : members.items())
      if (!root.contains(key)) root[key] = value;
    return jsonText(root) + "\n";
  }

 private:
  void add(Json feature) { features_.push_back(std::move(feature)); }

  // The members and properties we do not know come after ours and never replace them.
  static Json feature(Json geometry, Json properties, const std::string& foreign) {
    Json result = {{"type", "Feature"}};
    const Json kept = objectFrom(foreign);
    if (const auto members = kept.find(kMembersKey); members != kept.end() && members->is_object())
      for (const auto& [key, value] : members->items())
        if (!result.contains(key)) result[key] = value;
    for (const auto& [key, value] : kept.items())
      if (key != kMembersKey && !properties.contains(key)) properties[key] = value;
    result["geometry"] = std::move(geometry);
    result["properties"] = std::move(properties);
    return result;
  }

  template <class T>
  void addAll() {
    for (const T& object : collectionOf<T>(yard_)) {
      Json properties = {{"kind", kFeatureKind<T>}};
      visitProperties(object, PropertyWriter(properties));
      add(feature(shapeOf(object, frame_), std::move(properties), object.foreign));
    }
  }

  void addOwn(const OwnSpecies& own) {
    Json facts = Json::object();
    for (const OwnFact& fact : own.facts) facts[fact.column] = fact.value;
    add(feature(nullptr, {{"kind", kSpeciesKind}, {"species", own.botanicalName}, {"facts", facts}},
                {}));
  }

  void addDrift(const Drift& drift) {
    Json properties = {{"kind", kFeatureKind<Drift>}, {"drift", drift.id.value()}};
    visitProperties(drift, PropertyWriter(properties));
    const std::string code = codeOf(yard_, drift.species);
    if (!code.empty()) properties["code"] = code;
    if (const Bed* bed = yard_.beds.find(drift.bed)) properties["bed"] = bed->name;
    add(feature(nullptr, std::move(properties), drift.foreign));
    for (const Plant& plant : drift.plants) addPlant(drift, plant, code);
  }

  void addPlant(const Drift& drift, const Plant& plant, const std::string& code) {
    Json properties = {{"kind", kPlantKind},           {"drift", drift.id.value()},
                       {"species", drift.species},     {"spacing_m", drift.spacing.metres()},
                       {"layer", wordOf(drift.layer)}, {"size", wordOf(drift.size)}};
    if (!code.empty()) properties["code"] = code;
    add(feature(geometryOf(plant.at, frame_), std::move(properties), {}));
  }

  const Yard& yard_;
  LocalFrame frame_;
  Json features_ = Json::array();
};

}  // namespace

std::string yardToGeoJson(const Yard& yard) {
  return Writer(yard).write();
}

}  // namespace tussock
