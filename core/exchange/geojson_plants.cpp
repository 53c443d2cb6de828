// SPDX-License-Identifier: MIT
// Plants of a GeoJSON file as drifts of the yard. They are planted when all beds are read.
#include <algorithm>

#include <fmt/format.h>

#include "core/catalog/plan_codes.h"
#include "core/exchange/geojson_import.h"

namespace tussock {

namespace {

constexpr Length kUsualSpacing = Length::centimetres(30);  // of a species that is not known

std::vector<Point> placesOf(const DriftIn& in, const std::vector<const DriftIn*>& plants) {
  std::vector<Point> places = in.places;
  for (const DriftIn* plant : plants)
    places.insert(places.end(), plant->places.begin(), plant->places.end());
  return places;
}

}  // namespace

DriftIn GeoImport::driftIn(const FeatureIn& feature) {
  DriftIn in{{}, false, {}, {}, {}, {}, feature};
  PropertyReader properties(feature.properties);
  properties.take("kind");
  if (const Json* key = properties.take("drift"); key != nullptr && !key->is_null())
    in.key = jsonText(*key);
  in.layerSaid = properties.has("layer");
  visitProperties(in.drift, properties);
  properties("code", in.code);
  properties("bed", in.bedName);
  in.drift.foreign = withMembers(properties.rest(), feature.json);
  warnAll(feature, properties.refused());
  if (in.drift.species.empty())
    throw FormatError("it names no species; give the botanical name as \"species\"");
  return in;
}

void GeoImport::readDrift(const FeatureIn& feature) {
  DriftIn in = driftIn(feature);
  if (!feature.geometry.is_null()) {
    ShapeReader shapes{frame_, {}};
    for (const Json& geometry : singleGeometries(feature.geometry))
      if (geometryType(geometry) == "Point") shapes.read(geometry, in.places.emplace_back());
  }
  drifts_.push_back(std::move(in));
}

void GeoImport::readPlant(const FeatureIn& feature) {
  DriftIn in = driftIn(feature);
  ShapeReader shapes{frame_, {}};
  for (const Json& geometry : singleGeometries(feature.geometry))
    shapes.read(geometry, in.places.emplace_back());
  plants_.push_back(std::move(in));
}

void GeoImport::addUsual(DriftIn& in) const {
  if (const auto renamed = renamed_.find(in.drift.species); renamed != renamed_.end())
    in.drift.species = renamed->second;
  const auto own = species_.find(in.drift.species);
  const Species* species = own != species_.end() ? &own->second : facts_.find(in.drift.species);
  if (in.drift.spacing <= Length{}) in.drift.spacing = species ? species->spacing : kUsualSpacing;
  if (!in.layerSaid && species) in.drift.layer = species->usualLayer();
}

Id<Bed> GeoImport::bedNamed(const std::string& name) const {
  Id<Bed> found;
  if (name.empty()) return found;
  for (const Bed& bed : draft_.yard().beds) {
    if (bed.name != name) continue;
    if (found.valid()) return {};  // two of the name say nothing
    found = bed.id;
  }
  return found;
}

// The bed of that name, else the one that holds the most of the places; not valid when none does.
Id<Bed> GeoImport::bedFor(const std::string& name, const std::vector<Point>& places) const {
  if (const Id<Bed> named = bedNamed(name); named.valid()) return named;
  Id<Bed> best;
  std::ptrdiff_t most = 0;
  for (const Bed& bed : draft_.yard().beds) {
    const auto held = std::count_if(places.begin(), places.end(),
                                    [&](Point p) { return contains(bed.outline, p); });
    if (held > most) best = bed.id, most = held;
  }
  return best;
}

// Those that name their drift come together; the others by bed, species, spacing, layer and size.
void GeoImport::plantDrifts() {
  std::map<std::string, std::vector<const DriftIn*>> named, loose;
  for (DriftIn& one : plants_) {
    addUsual(one);
    const Drift& d = one.drift;
    if (!one.key.empty())
      named[one.key].push_back(&one);
    else
      loose[fmt::format("{}|{}|{}|{}|{}", bedFor(one.bedName, one.places).value(), d.species,
                        d.spacing.metres(), wordOf(d.layer), wordOf(d.size))]
          .push_back(&one);
  }
  for (DriftIn& drift : drifts_) {
    addUsual(drift);
    plant(drift, named[drift.key]);
    named.erase(drift.key);
  }
  for (const auto* groups : {&named, &loose})
    for (const auto& [key, plants] : *groups) {
      DriftIn first = *plants.front();
      first.places.clear();
      plant(first, plants);
    }
}

void GeoImport::plant(DriftIn& in, const std::vector<const DriftIn*>& plants) {
  std::vector<const DriftIn*> same;
  for (const DriftIn* one : plants) {
    if (one->drift.species == in.drift.species)
      same.push_back(one);
    else
      warn(one->from, fmt::format("left out: its drift is of {}, not {}", in.drift.species,
                                  one->drift.species));
  }
  const std::vector<Point> places = placesOf(in, same);
  in.drift.bed = bedFor(in.bedName, places);
  if (!in.drift.bed.valid()) {
    warn(in.from, "kept aside: no bed holds it. Draw the bed and import again");
    keep(in.from);
    for (const DriftIn* one : same) keep(one->from);
    return;
  }
  in.drift.id = ids_.take<Drift>();
  for (const Point at : places) in.drift.plants.push_back({ids_.take<Plant>(), at});
  takeCode(draft_, in.drift.species, ids_, in.code);
  draft_.put(in.drift);
}

}  // namespace tussock
