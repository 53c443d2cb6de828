// SPDX-License-Identifier: MIT
// What keeps the sun from the whole yard: the earth, hills and far buildings, and the slope of the
// yard itself.
#pragma once

#include <vector>

#include "core/geometry/point.h"
#include "core/model/settings.h"
#include "core/sun/position.h"

namespace tussock {

class Horizon {
 public:
  Horizon() = default;
  // Skyline points that are not finite are left out; a slope that is not finite, or not between 0
  // and 60 degrees, is taken as level.
  explicit Horizon(const Settings& settings);

  // Of the skyline in a direction, never below 0: straight lines between its points, on over north.
  [[nodiscard]] Angle elevationAt(Angle azimuth) const;
  // True where the sun's centre is above 0 degrees, above the skyline and before the slope.
  [[nodiscard]] bool clears(const SunPosition& sun) const;
  // True when clears() asks no more than that the sun is up.
  [[nodiscard]] bool isOpen() const { return skyline_.empty() && rise_ == Point(); }
  // Of the ground, metres up for each metre east and north; the gradient of a plane.
  [[nodiscard]] Point rise() const { return rise_; }

  bool operator==(const Horizon&) const = default;

 private:
  std::vector<SkylinePoint> skyline_;  // azimuths from 0 up to 2 pi, rising
  Point rise_;
};

}  // namespace tussock
