// SPDX-License-Identifier: MIT
// The plants of a bed lined up for the checks of what people see; the sight itself is in
// planting/sight.h.
#pragma once

#include <algorithm>
#include <vector>

#include "core/checks/survey.h"
#include "core/geometry/point_grid.h"
#include "core/planting/sight.h"

namespace tussock {

[[nodiscard]] SightLimits sightLimits(const Survey& survey);

// One plant of the main layer.
struct Standing {
  Point at;
  SightOutline seen;
  const SurveyedDrift* drift = nullptr;
};

// The plants of a bed's main layer, of which those near a line of sight are found quickly.
class Lineup {
 public:
  explicit Lineup(const SurveyedBed& bed);

  [[nodiscard]] const std::vector<Standing>& plants() const { return plants_; }
  [[nodiscard]] double tallest() const { return tallest_; }
  // Calls f(Standing) for all that may stand in the line of sight, as far as plants hide anything,
  // and for some that do not.
  template <class F>
  void forEachBetween(const Standing& rear, const Sight& sight, double hidesWithin, F&& f) const {
    Box box{rear.at, rear.at};
    box.include(rear.at + sight.towards * std::min(hidesWithin, sight.toEyes));
    grid_.forEachAround(box.grown(widest_), [&](std::size_t i) { f(plants_[i]); });
  }

 private:
  std::vector<Standing> plants_;
  PointGrid grid_;  // of the plants, which stand in its order
  double tallest_ = 0.0;
  double widest_ = 0.0;
};

}  // namespace tussock
