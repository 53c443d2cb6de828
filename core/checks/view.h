// SPDX-License-Identifier: MIT
// The plants of a bed lined up for the checks of what people see; the sight itself is in
// planting/sight.h.
#pragma once

#include <span>
#include <vector>

#include "core/checks/survey.h"
#include "core/planting/sight.h"

namespace tussock {

[[nodiscard]] SightLimits sightLimits(const Survey& survey);

// One plant of the main layer.
struct Standing {
  Point at;
  SightOutline seen;
  const SurveyedDrift* drift = nullptr;
};

// The plants of a bed in order along the viewpoint's axis, so that those near a line of sight are
// found quickly.
class Lineup {
 public:
  Lineup(const SurveyedBed& bed, const Viewpoint& viewpoint);

  [[nodiscard]] const std::vector<Standing>& plants() const { return plants_; }
  [[nodiscard]] double tallest() const { return tallest_; }
  // All that may stand in the line of sight, and some that do not.
  [[nodiscard]] std::span<const Standing> between(const Standing& rear, const Sight& sight) const;

 private:
  Point axis_;
  std::vector<Standing> plants_;
  std::vector<double> along_;
  double tallest_ = 0.0;
  double widest_ = 0.0;
};

}  // namespace tussock
