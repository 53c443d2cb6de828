// SPDX-License-Identifier: MIT
// What the parts of reading GeoJSON share.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/catalog/entry_checks.h"
#include "core/edit/draft.h"
#include "core/exchange/geojson_properties.h"
#include "core/exchange/geojson_shapes.h"

namespace tussock {

// In `foreign`, members of a feature beside its type, geometry and properties are kept under this.
inline constexpr const char* kMembersKey = "@feature";

// One feature as it stands in the file.
struct FeatureIn {
  std::size_t number = 0;  // counted from 1
  const Json& json;
  const Json& geometry;    // null when absent
  const Json& properties;  // an object or null
  std::string kind;        // empty when it has none

  [[nodiscard]] std::string label() const;  // "Feature 3 (bed Front)"
};

// A plant, or a drift with its plants, until all beds are read.
struct DriftIn {
  Drift drift;  // its attributes; plants of a MultiPoint
  bool layerSaid = false;
  std::string key;  // as the file names it; empty when it does not
  std::string code;
  std::string bedName;
  std::vector<Point> places;
  FeatureIn from;
};

// All plants that are known, with months as they are north of the equator, as values of one's own
// are, and what a person can have meant beside them.
struct OwnSpeciesJudge {
  Catalogue north;
  EntryChecks checks;
};

class GeoImport {
 public:
  GeoImport(const Yard& yard, const Catalogue& facts, IdSource& ids);

  void read(const FeatureIn& feature);
  void takeMembers(const Json& root);  // of the collection, beside its features
  [[nodiscard]] GeoJsonImport finish(std::string label);

 private:
  using Read = void (GeoImport::*)(const FeatureIn&);
  [[nodiscard]] static Read readerOf(std::string_view kind);
  template <class T>
  void readObjects(const FeatureIn& feature);
  template <class T>
  void putPieces(const FeatureIn& feature, const T& first, std::vector<Polygon>& furtherPieces);
  void readDrift(const FeatureIn& feature);
  void readPlant(const FeatureIn& feature);
  // geojson_species.cpp
  void readSpecies(const FeatureIn& feature);
  void keepFaulty(const FeatureIn& feature, std::string_view why);
  [[nodiscard]] OwnSpeciesJudge& judge();
  [[nodiscard]] DriftIn driftIn(const FeatureIn& feature);

  void keep(const FeatureIn& feature);
  void warn(const FeatureIn& feature, std::string_view what);
  void warnAll(const FeatureIn& feature, const std::vector<std::string>& what);

  // geojson_plants.cpp
  void plantDrifts();
  void plant(DriftIn& in, const std::vector<const DriftIn*>& plants);
  [[nodiscard]] Id<Bed> bedFor(const std::string& name, const std::vector<Point>& places) const;
  [[nodiscard]] Id<Bed> bedNamed(const std::string& name) const;
  void addUsual(DriftIn& in) const;

  Draft draft_;
  LocalFrame frame_;
  const Catalogue& facts_;
  IdSource& ids_;
  std::vector<std::string> warnings_;
  std::size_t leftOut_ = 0;
  std::map<std::string, Species, std::less<>> species_;      // of the user's own, as they came in
  std::map<std::string, std::string, std::less<>> renamed_;  // of these, from synonyms
  std::optional<OwnSpeciesJudge> judge_;                     // once there is one to judge
  std::vector<DriftIn> drifts_;
  std::vector<DriftIn> plants_;
};

// Members of a feature that we do not know, added to the text of its unknown properties.
[[nodiscard]] std::string withMembers(const std::string& foreign, const Json& feature);

}  // namespace tussock
