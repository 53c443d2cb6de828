// SPDX-License-Identifier: MIT
#include "core/sun/position.h"

#include <cmath>
#include <numbers>

#include "core/sun/solar_series.h"

namespace tussock {

namespace {

using std::cos;
using std::sin;

constexpr double kSecondsPerDay = 86400.0;
constexpr double kParallax = 8.794 / 3600.0 * kDegree;  // of the sun at 1 au, IAU 1976

struct Equatorial {
  double rightAscension, declination, distance;
};

// Between -half and half a turn.
double nearZero(double angle) {
  return std::remainder(angle, kFullTurn);
}

Equatorial equatorial(const ApparentSun& sun) {
  const double ra =
      std::atan2(sin(sun.longitude) * cos(sun.obliquity), cos(sun.longitude));  // Meeus 25.6
  return {ra, std::asin(sin(sun.obliquity) * sin(sun.longitude)), sun.distance};
}

double altitudeAt(UtcTime time, Angle latitude, Angle longitude) {
  return sunPosition(time, latitude, longitude).altitude.radians();
}

UtcTime plusSeconds(UtcTime time, double seconds) {
  return time + std::chrono::seconds(std::llround(seconds));
}

UtcTime transitOf(Date day, double longitude) {
  const UtcTime meanNoon = plusSeconds(std::chrono::sys_days(day) + std::chrono::hours(12),
                                       -longitude / kFullTurn * kSecondsPerDay);
  const UtcTime near = plusSeconds(meanNoon, -60.0 * equationOfTime(meanNoon));
  return plusSeconds(meanNoon, -60.0 * equationOfTime(near));
}

}  // namespace

SunPosition sunPosition(UtcTime time, Angle latitude, Angle longitude) {
  const ApparentSun sun = apparentSun(time);
  const Equatorial at = equatorial(sun);
  const double phi = latitude.radians();
  const double hour = sun.siderealTime + longitude.radians() - at.rightAscension;
  const double east = -cos(at.declination) * sin(hour);
  const double north = sin(at.declination) * cos(phi) - cos(at.declination) * cos(hour) * sin(phi);
  const double up = sin(at.declination) * sin(phi) + cos(at.declination) * cos(hour) * cos(phi);
  const double altitude = std::atan2(up, std::hypot(east, north));
  const double azimuth = std::atan2(east, north);
  return {Angle::radians(azimuth < 0.0 ? azimuth + kFullTurn : azimuth),
          Angle::radians(altitude - kParallax / at.distance * cos(altitude))};
}

Angle solarDeclination(UtcTime time) {
  return Angle::radians(equatorial(apparentSun(time)).declination);
}

// Meeus 28.1.
double equationOfTime(UtcTime time) {
  const ApparentSun sun = apparentSun(time);
  const double difference = sun.meanLongitude - 0.0057183 * kDegree -
                            equatorial(sun).rightAscension + sun.nutation * cos(sun.obliquity);
  return nearZero(difference) / kFullTurn * kSecondsPerDay / 60.0;
}

Daylight timeAbove(Angle altitude, Date day, Angle latitude, Angle longitude) {
  using std::chrono::hours;
  const Angle east = Angle::radians(nearZero(longitude.radians()));
  const double wanted = altitude.radians();
  const auto isUp = [&](UtcTime time) { return altitudeAt(time, latitude, east) > wanted; };
  // The last second of the night, or the first, between a time below and a time above.
  const auto crossing = [&](UtcTime below, UtcTime above) {
    while (above - below > std::chrono::seconds(1) || below - above > std::chrono::seconds(1)) {
      const UtcTime middle = below + (above - below) / 2;
      (isUp(middle) ? above : below) = middle;
    }
    return above;
  };
  Daylight result;
  result.transit = transitOf(day, east.radians());
  const UtcTime before = result.transit - hours(12);
  const UtcTime after = result.transit + hours(12);
  const bool first = isUp(before), noon = isUp(result.transit), last = isUp(after);
  if (!first && !noon && !last) return result;
  // Near a pole the sun may come up after noon, or have gone down before it.
  if (!first)
    result.sunrise = noon ? crossing(before, result.transit) : crossing(result.transit, after);
  if (!last)
    result.sunset = noon ? crossing(after, result.transit) : crossing(result.transit, before);
  const auto up = result.sunset.value_or(after) - result.sunrise.value_or(before);
  result.hours = static_cast<double>(up.count()) / 3600.0;
  return result;
}

Daylight daylight(Date day, Angle latitude, Angle longitude) {
  // 34' of refraction at the horizon and 16' of the sun's radius (NOAA, Solar Calculation Details).
  return timeAbove(Angle::degrees(-0.833), day, latitude, longitude);
}

}  // namespace tussock
