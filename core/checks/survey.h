// SPDX-License-Identifier: MIT
// What the checks look at, looked up once for a run: each bed with its drifts and their facts.
#pragma once

#include <vector>

#include "core/checks/registry.h"

namespace tussock {

struct SurveyedDrift {
  const Drift* drift = nullptr;
  const Species* species = nullptr;  // null when the plant facts do not know it
  Box box;                           // around the plants' centres

  [[nodiscard]] bool seen() const { return species != nullptr && drift->layer == Layer::Main; }
};

struct SurveyedBed {
  const Bed* bed = nullptr;
  Box box;                            // around the outline
  std::vector<SurveyedDrift> drifts;  // those with plants, ids ascending
};

// Points into the input, which must outlive it.
struct Survey {
  const Yard& yard;
  const Catalogue& facts;
  const SunMap* sun = nullptr;
  std::vector<SurveyedBed> beds;  // ids ascending

  [[nodiscard]] double limit(std::string_view threshold) const;  // see thresholdFor
};
[[nodiscard]] Survey surveyOf(const CheckInput& input);

// What to show on the plan for some plants: a rectangle `margin` around them.
[[nodiscard]] Polygon placeAround(const Box& plants, Length margin);
[[nodiscard]] Polygon placeAround(const SurveyedDrift& drift);

}  // namespace tussock
