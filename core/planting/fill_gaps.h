// SPDX-License-Identifier: MIT
// Whether there is anything to fill between what stands in a bed.
#pragma once

#include <optional>

#include "core/model/yard.h"

namespace tussock {

// The share of its ground that the bed's main layer takes, where that is enough and there is no
// hole as wide as a plant of `spacing` metres, or those that stand there, ask for; else nothing.
// `flat` is the yard laid flat. What single small plants could still be squeezed into is no gap.
[[nodiscard]] std::optional<double> takenWithoutGaps(const Yard& yard, const Yard& flat,
                                                     Id<Bed> bed, double spacing);

}  // namespace tussock
