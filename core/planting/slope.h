// SPDX-License-Identifier: MIT
// The tilt of the ground. The plan is seen from straight above; spacing, set-backs and planted area
// are measured along the ground, which down the slope is longer by 1/cos of its angle: surface =
// plan area * sqrt(1 + s^2), s = rise over run (trigonometry).
#pragma once

#include "core/geometry/polygon.h"
#include "core/model/settings.h"

namespace tussock {

class Slope {
 public:
  // Slopes over 80 degrees count as 80: no ground that is planted by spacing is steeper.
  explicit Slope(const Settings& settings);

  [[nodiscard]] bool level() const { return stretch_ == 1.0; }
  // Coordinates in which straight distances are those along the ground; the origin stays.
  [[nodiscard]] Point onGround(Point plan) const {
    return plan + down_ * (more_ * dot(plan, down_));
  }
  [[nodiscard]] Point onPlan(Point ground) const {
    return ground - down_ * (less_ * dot(ground, down_));
  }
  [[nodiscard]] Polygon onGround(const Polygon& plan) const;
  [[nodiscard]] Angle onGround(Angle axis) const;  // anticlockwise from east
  // Metres along the ground between two places of the plan.
  [[nodiscard]] double distance(Point a, Point b) const;
  // Ground over plan area, and the most that a length of the plan grows by; 1 or more.
  [[nodiscard]] double stretch() const { return stretch_; }

 private:
  double stretch_ = 1.0;
  double more_ = 0.0;
  double less_ = 0.0;
  Point down_;  // unit vector the ground faces
};

}  // namespace tussock
