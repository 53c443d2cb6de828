// SPDX-License-Identifier: MIT
// Sources: Reda and Andreas, Solar Position Algorithm for Solar Radiation Applications,
// NREL/TP-560-34302 (2008), table A4.2 ("SPA" below); Meeus, Astronomical Algorithms, 2nd ed.
// (1998), by chapter ("Meeus" below).
#include "core/sun/solar_series.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <span>

#include "core/units/length.h"

namespace tussock {

namespace {

constexpr double kArcsecond = kDegree / 3600.0;
constexpr double kEpoch2000 = 2451545.0;  // Julian day of 2000 January 1.5

struct Term {
  double amplitude, phase, rate;  // 1e-8 radians; radians; radians per Julian millennium
};

// Earth's heliocentric longitude: terms from 5e-6 radians up, so that what is left out stays near
// 0.001 degree.
constexpr std::array kL0{Term{175347046, 0, 0},           Term{3341656, 4.6692568, 6283.07585},
                         Term{34894, 4.6261, 12566.1517}, Term{3497, 2.7441, 5753.3849},
                         Term{3418, 2.8289, 3.5231},      Term{3136, 3.6277, 77713.7715},
                         Term{2676, 4.4181, 7860.4194},   Term{2343, 6.1352, 3930.2097},
                         Term{1324, 0.7425, 11506.7698},  Term{1273, 2.0371, 529.691},
                         Term{1199, 1.1096, 1577.3435},   Term{990, 5.233, 5884.927},
                         Term{902, 2.045, 26.298},        Term{857, 3.508, 398.149},
                         Term{780, 1.179, 5223.694},      Term{753, 2.533, 5507.553},
                         Term{505, 4.583, 18849.228}};
constexpr std::array kL1{Term{628331966747, 0, 0}, Term{206059, 2.678235, 6283.07585},
                         Term{4303, 2.6351, 12566.1517}};
constexpr std::array kL2{Term{52919, 0, 0}, Term{8720, 1.0721, 6283.0758}};

double sum(std::span<const Term> terms, double millennia) {
  double total = 0.0;
  for (const Term& term : terms)
    total += term.amplitude * std::cos(term.phase + term.rate * millennia);
  return total * 1e-8;
}

struct Nutation {
  double longitude, obliquity;
};

// Meeus chapter 22, good to half a second of arc; `t` in Julian centuries.
Nutation nutationAt(double t) {
  const double node = (125.04452 - 1934.136261 * t) * kDegree;
  const double sun = (280.4665 + 36000.7698 * t) * kDegree;
  const double moon = (218.3165 + 481267.8813 * t) * kDegree;
  using std::cos;
  using std::sin;
  return {(-17.20 * sin(node) - 1.32 * sin(2 * sun) - 0.23 * sin(2 * moon) + 0.21 * sin(2 * node)) *
              kArcsecond,
          (9.20 * cos(node) + 0.57 * cos(2 * sun) + 0.10 * cos(2 * moon) - 0.09 * cos(2 * node)) *
              kArcsecond};
}

// Meeus 22.2, in radians.
double meanObliquity(double t) {
  return (84381.448 - 46.8150 * t - 0.00059 * t * t + 0.001813 * t * t * t) * kArcsecond;
}

// Meeus 12.4, in radians; universal time is taken as UTC, from which it is never a second away.
double meanSiderealTime(double daysSince2000) {
  const double t = daysSince2000 / 36525.0;
  const double degrees =
      280.46061837 + 360.98564736629 * daysSince2000 + 0.000387933 * t * t - t * t * t / 38710000.0;
  return std::fmod(degrees, 360.0) * kDegree;
}

// Meeus 28.2, in radians; `m` in Julian millennia.
double meanLongitude(double m) {
  const double degrees = 280.4664567 + 360007.6982779 * m + 0.03032028 * m * m;
  return std::fmod(degrees, 360.0) * kDegree;
}

// Meeus chapter 25, in astronomical units; `t` in Julian centuries.
double distanceAt(double t) {
  const double anomaly = (357.52911 + 35999.05029 * t) * kDegree;
  return 1.000140 - 0.016708 * std::cos(anomaly) - 0.000140 * std::cos(2 * anomaly);
}

}  // namespace

// Observed values at the start of each decade (Astronomical Almanac, section K), straight between
// them and level outside; a second is worth 0.00001 degree here.
double deltaT(double year) {
  constexpr std::array kSeconds{29.15, 33.15, 40.18, 50.54, 56.86, 63.83, 66.07, 69.36};
  const double decade =
      std::clamp((year - 1950.0) / 10.0, 0.0, static_cast<double>(kSeconds.size() - 1));
  const auto i = std::min(static_cast<std::size_t>(decade), kSeconds.size() - 2);
  return std::lerp(kSeconds[i], kSeconds[i + 1], decade - static_cast<double>(i));
}

ApparentSun apparentSun(UtcTime time) {
  const double universal =
      static_cast<double>(time.time_since_epoch().count()) / 86400.0 + 2440587.5 - kEpoch2000;
  const double terrestrial = universal + deltaT(2000.0 + universal / 365.25) / 86400.0;
  const double t = terrestrial / 36525.0;
  const double m = t / 10.0;
  const double earth = sum(kL0, m) + m * (sum(kL1, m) + m * sum(kL2, m));
  const Nutation nutation = nutationAt(t);

  ApparentSun result;
  result.distance = distanceAt(t);
  result.nutation = nutation.longitude;
  result.obliquity = meanObliquity(t) + nutation.obliquity;
  // Half a turn from the Earth; aberration by SPA equation 25, reduction to FK5 by Meeus 25.9.
  result.longitude = std::numbers::pi + earth - 0.09033 * kArcsecond + nutation.longitude -
                     20.4898 * kArcsecond / result.distance;
  result.meanLongitude = meanLongitude(m);
  result.siderealTime =
      meanSiderealTime(universal) + nutation.longitude * std::cos(result.obliquity);
  return result;
}

}  // namespace tussock
