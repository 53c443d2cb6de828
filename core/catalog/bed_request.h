// SPDX-License-Identifier: MIT
// What species are ranked against in a bed or at a point: the place, and what is there already.
#pragma once

#include <optional>

#include "core/catalog/rank.h"
#include "core/model/yard.h"

namespace tussock {

// `sunHours` a day are those of the sun map, open where there is none. Portions point into the
// catalogue, which must live on.
[[nodiscard]] RankRequest requestFor(const Yard& yard, const Catalogue& catalogue, const Bed& bed,
                                     std::optional<double> sunHours);
// Of the yard as a whole: its state, zone and deer, and all that grows in it.
[[nodiscard]] RankRequest requestFor(const Yard& yard, const Catalogue& catalogue);
// At one point; what is planted is that of the bed that holds it.
[[nodiscard]] RankRequest requestAt(const Yard& yard, const Catalogue& catalogue, Point at,
                                    std::optional<double> sunHours);

}  // namespace tussock
