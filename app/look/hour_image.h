// SPDX-License-Identifier: MIT
// Hours of sun as a picture of one pixel for each cell, north at the top.
#pragma once

#include <QImage>

#include "core/sun/hour_grid.h"

namespace tussock {

// What cells without hours look like, such as those under a building: nothing, or as much sun as
// lies beside them, so that no false hours appear along a wall when the picture is drawn smoothly.
enum class UntoldCells { Clear, AsBeside };
[[nodiscard]] QImage hourImage(const HourGrid& grid, UntoldCells untold);

}  // namespace tussock
