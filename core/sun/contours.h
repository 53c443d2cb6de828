// SPDX-License-Identifier: MIT
// Lines on the ground along which the hours of sun are the same (marching squares: Lorensen and
// Cline 1987 in the plane; hours run linearly between the centres of neighbouring cells).
#pragma once

#include <vector>

#include "core/sun/hour_grid.h"

namespace tussock {

struct ContourLine {
  Polyline points;  // at least two; more hours lie on the left
  bool closed = false;
};
// Lines end at the edge of the grid and at buildings. Where four cells meet crosswise, their mean
// decides which two belong together.
[[nodiscard]] std::vector<ContourLine> contoursOf(const HourGrid& grid, double level);

[[nodiscard]] double lengthOf(const ContourLine& line);  // metres
// The point half way along it.
[[nodiscard]] Point middleOf(const ContourLine& line);

}  // namespace tussock
