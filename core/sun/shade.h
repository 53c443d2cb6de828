// SPDX-License-Identifier: MIT
// Shadows on the ground at one instant.
#pragma once

#include <vector>

#include "core/sun/outline.h"
#include "core/sun/position.h"
#include "core/sun/solids.h"

namespace tussock {

struct Shadow {
  Outline outline;        // a body's own footprint is part of it
  double openness = 0.0;  // share of direct sun let through
  int group = 0;          // shadows of one object, which dim the sun once where they overlap
};
// In order of group; nothing when the sun does not clear the horizon (see Horizon::clears), for
// then there is no sun to keep off: sunlit() tells.
[[nodiscard]] std::vector<Shadow> shadowsOf(const Solids& solids, const SunPosition& sun,
                                            MonthDay day);
// The same into a vector that is used again, so that nothing is allocated from step to step.
void castShadows(const Solids& solids, const SunPosition& sun, MonthDay day,
                 std::vector<Shadow>& shadows);
// True where open ground of the yard has direct sun.
[[nodiscard]] bool sunlit(const Solids& solids, const SunPosition& sun);
// Share of direct sun that reaches p when the yard is sunlit: the product of the openness of the
// objects whose shadow is over it.
[[nodiscard]] double directShare(const std::vector<Shadow>& shadows, Point p);

}  // namespace tussock
