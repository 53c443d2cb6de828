// SPDX-License-Identifier: MIT
// Planting patterns as point sets.
#pragma once

#include <numbers>
#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

// Ground one plant takes in a triangular pattern: s² √3/2 (hexagonal packing, Lagrange).
[[nodiscard]] constexpr Area triangularGround(Length spacing) {
  return spacing * spacing * (std::numbers::sqrt3 / 2.0);
}
[[nodiscard]] double triangularCount(Area ground, Length spacing);
[[nodiscard]] double squareCount(Area ground, Length spacing);

// All points of a triangular lattice of the given spacing inside `box`, through `origin`, with rows
// turned `axis` anticlockwise from east.
[[nodiscard]] std::vector<Point> triangularLattice(const Box& box, Length spacing, Point origin,
                                                   Angle axis);

}  // namespace tussock
