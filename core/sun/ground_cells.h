// SPDX-License-Identifier: MIT
// The cells of a grid whose centres lie on some ground.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"
#include "core/sun/row_spans.h"

namespace tussock {

// In at least one of the polygons; their edges count as inside. Grows with the polygons, their
// corners and the rows under them, not with the grid.
[[nodiscard]] AskedCells cellsUnder(const std::vector<Polygon>& polygons, const Grid& grid);

}  // namespace tussock
