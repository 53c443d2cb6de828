// SPDX-License-Identifier: MIT
// Figures of drifts, beds and the whole yard, for the window, the lists and the checks alike.
#pragma once

#include <optional>

#include "core/model/yard.h"
#include "core/sun/map.h"

namespace tussock {

// Area of the bed along the ground, see Slope.
[[nodiscard]] Area surfaceOf(const Yard& yard, const Bed& bed);

struct Totals {
  int drifts = 0;
  int plants = 0;
  int existing = 0;  // of these, what stands there already
  int species = 0;
  Area ground;  // of the beds, along the ground
  Area taken;   // by the plants of the main layer, see groundOf

  [[nodiscard]] double share() const { return ground > Area() ? taken / ground : 0.0; }
};
[[nodiscard]] Totals totalsOf(const Yard& yard);
[[nodiscard]] Totals totalsOf(const Yard& yard, const Bed& bed);

// Mean over the plants that stand on the map; nothing when none does.
[[nodiscard]] std::optional<SunHours> sunOn(const Drift& drift, const SunMap& map);

}  // namespace tussock
