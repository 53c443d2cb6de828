// SPDX-License-Identifier: MIT
// A roof as it is seen from above: of the very bodies that cast its shade.
#pragma once

#include <array>
#include <vector>

#include "core/model/solids.h"

namespace tussock {

struct RoofPlan {
  std::vector<Polygon> eaves;                 // where it reaches past the walls; else empty
  std::vector<std::array<Point, 2>> creases;  // ridges, hips and valleys, in pieces
};
// Site metres. Nothing is told of a building whose heights are no heights.
[[nodiscard]] RoofPlan roofPlanOf(const Building& building);

}  // namespace tussock
