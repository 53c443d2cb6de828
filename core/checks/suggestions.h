// SPDX-License-Identifier: MIT
// Species that would fill a gap in bloom.
#pragma once

#include <vector>

#include "core/catalog/bloom.h"
#include "core/catalog/catalogue.h"
#include "core/model/yard.h"
#include "core/sun/map.h"

namespace tussock {

// Up to `count` species of the catalogue that suit the bed, flower in these weeks and do not grow
// in it yet: the same, in the same order, as the plant list proposes for the gap (bestToFill).
// Without a bed those for the yard; where only one bed of it is planted, for that bed.
[[nodiscard]] std::vector<const Species*> speciesToFill(WeekRange gap, const Bed* bed,
                                                        const Yard& yard, const Catalogue& facts,
                                                        const SunMap* sun, std::size_t count);

}  // namespace tussock
