// SPDX-License-Identifier: MIT
// How many plants a pattern takes.
#pragma once

#include <numbers>

#include "core/units/length.h"

namespace tussock {

// Ground one plant takes in a triangular pattern: s² √3/2 (hexagonal packing, Lagrange).
[[nodiscard]] constexpr Area triangularGround(Length spacing) {
  return spacing * spacing * (std::numbers::sqrt3 / 2.0);
}
[[nodiscard]] double triangularCount(Area ground, Length spacing);
[[nodiscard]] double squareCount(Area ground, Length spacing);

}  // namespace tussock
