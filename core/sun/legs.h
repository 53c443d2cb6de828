// SPDX-License-Identifier: MIT
// Houses in the shape of an L as two legs, each with a roof of its own.
#pragma once

#include <optional>

#include "core/geometry/polygon.h"

namespace tussock {

// A rectangle (or nearly) along `along`, anticlockwise. It starts with the side on which it meets
// the other leg's outer wall: corners 0 and 3; the free end is between 1 and 2.
struct Leg {
  Ring ground;
  Point along;  // unit vector from the meeting side to the free end
  double length = 0.0, width = 0.0;
};
struct Legs {
  Leg wide, narrow;  // by width; they share the ground at the corner
};
// Nothing unless the outline has six corners, all square within two degrees, no holes, and legs
// that are at least as long as they are wide.
[[nodiscard]] std::optional<Legs> legsOf(const Polygon& polygon);

}  // namespace tussock
