// SPDX-License-Identifier: MIT
// What is asked of a plant's place, by the yard's thresholds: for the checks and for a plant while
// it is moved.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/checks/survey.h"
#include "core/planting/slope.h"

namespace tussock {

struct SpacingLimits {
  explicit SpacingLimits(const Survey& survey);

  // Between a plant of one drift and a plant of the other, along the ground. Within one drift of a
  // strict pattern it is the whole spacing.
  [[nodiscard]] Length required(const Drift& a, const Drift& b) const;
  // Metres: the largest distance asked of any two plants of spacings up to this.
  [[nodiscard]] double reach(Length largestSpacing) const;

  double factor;
  Length betweenLayers;
};

[[nodiscard]] Length requiredSetBack(const Survey& survey, const Bed& bed, const Drift& drift);
// Along the ground from a place of the plan to the bed's edge; negative outside the bed.
[[nodiscard]] Length depthInside(const Slope& slope, const Polygon& groundOutline, Point plan);

// Of the drift those that stand apart from the most of it, measured on the ground; none where its
// pattern does not ask for one piece.
[[nodiscard]] std::vector<const Plant*> plantsApart(const Settings& settings, const Drift& drift);
// That some do; nothing where none does.
[[nodiscard]] std::optional<Finding> findingOfPieces(const Settings& settings, const Drift& drift);

// Something no plant can stand in, and how far from it a point is (negative inside), in metres of
// the plan. Refers to the yard's shapes.
struct Obstacle {
  ObjectRef ref;
  Box box;
  std::function<double(Point)> distanceTo;
};
[[nodiscard]] std::vector<Obstacle> obstaclesOf(const Yard& yard);

}  // namespace tussock
