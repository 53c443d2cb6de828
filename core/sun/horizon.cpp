// SPDX-License-Identifier: MIT
#include "core/sun/horizon.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tussock {

namespace {

Angle inOneTurn(Angle azimuth) {
  const double turns = std::floor(azimuth.radians() / kFullTurn);
  const double rest = azimuth.radians() - turns * kFullTurn;
  return Angle::radians(rest < kFullTurn ? rest : 0.0);
}

std::vector<SkylinePoint> inOrder(const std::vector<SkylinePoint>& skyline) {
  std::vector<SkylinePoint> result;
  for (const SkylinePoint& p : skyline)
    if (std::isfinite(p.azimuth.radians()) && std::isfinite(p.elevation.radians()))
      result.push_back({inOneTurn(p.azimuth), p.elevation});
  std::stable_sort(result.begin(), result.end(), [](const SkylinePoint& a, const SkylinePoint& b) {
    return a.azimuth < b.azimuth;
  });
  return result;
}

Point riseOf(Angle slope, Angle aspect) {
  const bool usable = std::isfinite(aspect.radians()) && slope > Angle() &&
                      slope <= Angle::degrees(60);  // no for NaN
  if (!usable) return {};
  return directionOf(aspect) * -std::tan(slope.radians());
}

}  // namespace

Horizon::Horizon(const Settings& settings)
    : skyline_(inOrder(settings.skyline)), rise_(riseOf(settings.slope, settings.aspect)) {}

Angle Horizon::elevationAt(Angle azimuth) const {
  if (skyline_.empty()) return {};
  const Angle at = inOneTurn(azimuth);
  const auto next = std::find_if(skyline_.begin(), skyline_.end(),
                                 [at](const SkylinePoint& point) { return point.azimuth > at; });
  const SkylinePoint& after = next == skyline_.end() ? skyline_.front() : *next;
  const SkylinePoint& before = next == skyline_.begin() ? skyline_.back() : *std::prev(next);
  const auto since = [&](Angle from, Angle to) {
    const double gap = (to - from).radians();
    return gap < 0.0 ? gap + kFullTurn : gap;
  };
  const double whole = since(before.azimuth, after.azimuth);
  const double share = whole > 0.0 ? since(before.azimuth, at) / whole : 0.0;
  const Angle elevation = before.elevation + (after.elevation - before.elevation) * share;
  return std::max(elevation, Angle());
}

bool Horizon::clears(const SunPosition& sun) const {
  if (!(sun.altitude > elevationAt(sun.azimuth))) return false;
  return std::tan(sun.altitude.radians()) > dot(rise_, directionOf(sun.azimuth));
}

}  // namespace tussock
