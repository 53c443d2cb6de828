// SPDX-License-Identifier: MIT
// Shadows on level ground at one instant.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"
#include "core/sun/position.h"
#include "core/sun/solids.h"

namespace tussock {

struct Shadow {
  Ring outline;           // convex, anticlockwise, includes the body's own footprint
  double openness = 0.0;  // share of direct sun let through
};
// Nothing when the sun's centre is not above the horizon.
[[nodiscard]] std::vector<Shadow> shadowsOf(const Solids& solids, const SunPosition& sun,
                                            MonthDay day);
// Share of direct sun that reaches p: the product of the openness of the shadows over it.
[[nodiscard]] double directShare(const std::vector<Shadow>& shadows, Point p);

}  // namespace tussock
