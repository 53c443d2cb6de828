// SPDX-License-Identifier: MIT
// The sun's apparent place by the leading terms of the theory VSOP87, as the Solar Position
// Algorithm of NREL lists them. Used by position.cpp only.
#pragma once

#include "core/units/date.h"

namespace tussock {

// Radians, referred to the true equinox of date; geocentric.
struct ApparentSun {
  double longitude = 0.0;      // with nutation and aberration
  double meanLongitude = 0.0;  // of the sun, reduced to one turn
  double obliquity = 0.0;      // true
  double nutation = 0.0;       // in longitude
  double siderealTime = 0.0;   // apparent, at Greenwich
  double distance = 1.0;       // astronomical units
};
[[nodiscard]] ApparentSun apparentSun(UtcTime time);

// Terrestrial minus universal time, in seconds.
[[nodiscard]] double deltaT(double year);

}  // namespace tussock
