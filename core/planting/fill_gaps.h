// SPDX-License-Identifier: MIT
// Whether there is anything to fill between what stands in a bed.
#pragma once

#include <optional>
#include <set>
#include <string>

#include "core/model/yard.h"

namespace tussock {

// The share of its ground that the bed's main layer takes, where that is enough and there is no
// hole that a group of three left, at `spacing` metres or that of those that stand there; else
// nothing. `flat` is the yard laid flat. What single small plants could still be squeezed into is
// no gap.
[[nodiscard]] std::optional<double> takenWithoutGaps(const Yard& yard, const Yard& flat,
                                                     Id<Bed> bed, double spacing);

// Of the bed's main layer.
[[nodiscard]] std::set<std::string> speciesIn(const Yard& yard, Id<Bed> bed);

}  // namespace tussock
