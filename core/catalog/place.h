// SPDX-License-Identifier: MIT
// What a bed or a point of the yard offers to plants.
#pragma once

#include <optional>

#include "core/catalog/fit.h"
#include "core/model/yard.h"

namespace tussock {

// State, zone and deer of the yard alone.
[[nodiscard]] Place placeOf(const Yard& yard);
// With the bed's moisture and soil, and the lowest height limit that lies over any of it. The hours
// of sun come from the sun map, or are left open.
[[nodiscard]] Place placeOf(const Yard& yard, const Bed& bed, std::optional<double> sunHours);
// The same at one point, where a moist or dry patch goes before the bed.
[[nodiscard]] Place placeAt(const Yard& yard, Point at, std::optional<double> sunHours);

}  // namespace tussock
