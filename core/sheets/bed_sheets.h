// SPDX-License-Identifier: MIT
// The sheets of one bed: the bed to scale with its labels and schedule, in parts if need be.
#pragma once

#include <vector>

#include "core/sheets/layout.h"

namespace tussock {

// How far a bed is turned on its sheet, anticlockwise: square with the page along its smallest
// rectangle, with the side people look from at the bottom; near north up when that is not known.
[[nodiscard]] Angle turnFor(const Bed& bed);

// Without title strips.
[[nodiscard]] std::vector<Sheet> bedSheets(const PlanSource& source, const Bed& bed);

}  // namespace tussock
