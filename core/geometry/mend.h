// SPDX-License-Identifier: MIT
// Mending polygons that cannot be used as they are, where they can be read in one way only.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/geometry/polygon.h"

namespace tussock {

enum class Mend { SpikeTakenOff, TouchParted, HolesJoined, HoleCutOut, FlawEvened };
[[nodiscard]] std::string_view explain(Mend mend);

struct MendedPolygon {
  std::vector<Polygon> pieces;  // valid, one at least, none under a square centimetre
  std::vector<Mend> done;       // each once, one at least
};

// What is nearer than 1 mm counts as touching. Nothing where it would take a guess: an outline that
// crosses itself, a hole outside it or within another; nor for rings of over 5,000 corners. A
// polygon that is valid already has no need of it.
[[nodiscard]] std::optional<MendedPolygon> mended(const Polygon& polygon);

}  // namespace tussock
