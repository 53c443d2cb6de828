// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/exchange/geojson.h"

namespace tussock {

namespace {

// WGS 84 ellipsoid: semi-major axis in metres and flattening (NGA.STND.0036, defining parameters).
constexpr double kSemiMajor = 6378137.0;
constexpr double kFlattening = 1.0 / 298.257223563;
constexpr double kEccentricitySquared = kFlattening * (2.0 - kFlattening);

// At the very poles east has no direction; a yard stands nowhere near.
constexpr double kLeastCosine = 1e-6;

}  // namespace

// Metres for a radian of latitude and of longitude: the meridian's radius of curvature M, and N cos
// φ with N the radius in the prime vertical.
LocalFrame::LocalFrame(Angle latitude, Angle longitude)
    : latitude_(latitude), longitude_(longitude) {
  const double sine = std::sin(latitude.radians());
  const double w = 1.0 - kEccentricitySquared * sine * sine;
  metresPerRadianNorth_ = kSemiMajor * (1.0 - kEccentricitySquared) / (w * std::sqrt(w));
  metresPerRadianEast_ =
      kSemiMajor / std::sqrt(w) * std::max(std::cos(latitude.radians()), kLeastCosine);
}

Point LocalFrame::toSite(double longitudeDegrees, double latitudeDegrees) const {
  // The short way round, so that a yard may lie across the 180th meridian.
  const double east = std::remainder(longitudeDegrees - longitude_.degrees(), 360.0);
  const double north = latitudeDegrees - latitude_.degrees();
  return {Angle::degrees(east).radians() * metresPerRadianEast_,
          Angle::degrees(north).radians() * metresPerRadianNorth_};
}

LocalFrame::Geographic LocalFrame::toGeographic(Point p) const {
  const double east = Angle::radians(p.x / metresPerRadianEast_).degrees();
  const double north = Angle::radians(p.y / metresPerRadianNorth_).degrees();
  return {std::remainder(longitude_.degrees() + east, 360.0),
          std::clamp(latitude_.degrees() + north, -90.0, 90.0)};
}

}  // namespace tussock
