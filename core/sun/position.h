// SPDX-License-Identifier: MIT
// Where the sun stands. Topocentric, airless, within 0.03 degrees from 1950 to 2050.
#pragma once

#include <optional>

#include "core/units/date.h"
#include "core/units/length.h"

namespace tussock {

inline constexpr std::chrono::year kFirstExactYear{1950}, kLastExactYear{2050};
[[nodiscard]] constexpr bool isInExactYears(Date day) {
  return day.year() >= kFirstExactYear && day.year() <= kLastExactYear;
}

struct SunPosition {
  Angle azimuth;   // clockwise from true north
  Angle altitude;  // true (no refraction), of the sun's centre
};
[[nodiscard]] SunPosition sunPosition(UtcTime time, Angle latitude, Angle longitude);
[[nodiscard]] Angle solarDeclination(UtcTime time);
// Apparent minus mean solar time, in minutes.
[[nodiscard]] double equationOfTime(UtcTime time);

struct Daylight {
  // Absent in midnight sun and polar night. On the day on which either begins near a pole there may
  // be one of the two, before or after the transit.
  std::optional<UtcTime> sunrise, sunset;
  UtcTime transit;
  double hours = 0.0;  // 24 in midnight sun, 0 in polar night
};
// By the -0.833 degree convention, for the solar day whose transit is nearest local noon of `day`
// (mean solar time; longitudes beyond 180 degrees are brought back first).
[[nodiscard]] Daylight daylight(Date day, Angle latitude, Angle longitude);
// The same for any altitude of the sun's centre, such as 0 for direct sun on open ground, from
// twelve hours before the transit to twelve after. A sun that crosses it twice on one side of the
// transit, for some minutes near a pole, is missed.
[[nodiscard]] Daylight timeAbove(Angle altitude, Date day, Angle latitude, Angle longitude);

}  // namespace tussock
