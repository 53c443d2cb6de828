// SPDX-License-Identifier: MIT
// Species that would fill a gap in bloom.
#pragma once

#include <vector>

#include "core/catalog/bloom.h"
#include "core/catalog/fit.h"
#include "core/sun/map.h"

namespace tussock {

// Up to `count` species of the catalogue that suit the place, flower in these weeks and do not grow
// in the bed yet (in the yard, without a bed): those that fill most weeks first, then by name.
[[nodiscard]] std::vector<const Species*> speciesToFill(WeekSet weeks, const Bed* bed,
                                                        const Yard& yard, const Catalogue& facts,
                                                        const SunMap* sun, std::size_t count);

}  // namespace tussock
