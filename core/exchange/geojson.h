// SPDX-License-Identifier: MIT
// GeoJSON (RFC 7946), both ways. Longitude and latitude are converted on the tangent plane of the
// WGS 84 ellipsoid at the yard's position.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/catalogue.h"
#include "core/edit/change.h"

namespace tussock {

[[nodiscard]] std::string yardToGeoJson(const Yard& yard);

struct GeoJsonImport {
  ChangeSet edit;                     // "Import site.geojson"
  std::vector<std::string> warnings;  // features left out or mended: which, why
  std::size_t leftOut = 0;            // features
};
// Throws FormatError, saying what and where, when it is not GeoJSON at all.
[[nodiscard]] GeoJsonImport importGeoJson(const Yard& yard, const Catalogue& facts,
                                          std::string_view json, std::string_view fileName,
                                          IdSource& ids);

// Site metres and geographic degrees about a yard's position.
class LocalFrame {
 public:
  LocalFrame(Angle latitude, Angle longitude);
  [[nodiscard]] Point toSite(double longitudeDegrees, double latitudeDegrees) const;
  struct Geographic {
    double longitude = 0.0, latitude = 0.0;  // degrees
  };
  [[nodiscard]] Geographic toGeographic(Point p) const;

 private:
  Angle latitude_, longitude_;
  double metresPerRadianNorth_, metresPerRadianEast_;
};

}  // namespace tussock
