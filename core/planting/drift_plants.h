// SPDX-License-Identifier: MIT
// The plants of a drift under an edit: which stay, which come, which id is whose.
#pragma once

#include <vector>

#include "core/planting/grow.h"

namespace tussock {

void sortById(std::vector<Plant>& plants);  // ascending
// What growing `count` plants of the drift where it stands asks for.
[[nodiscard]] GrowRequest requestFor(const Drift& drift, int count, CountAs as = CountAs::Odd);
// Plants at the new places, each with the id of the old plant nearest to it, new ids for the rest.
// Ids ascending.
[[nodiscard]] std::vector<Plant> withIds(std::vector<Plant> old, const std::vector<Point>& places,
                                         IdSource& ids);
// `count` of its plants: those nearest the middle, in one piece if it was. Ids ascending.
[[nodiscard]] std::vector<Plant> fewerPlants(const Drift& drift, int count);
// Its plants where they are, and more beside them up to `count`, even too; where not all fit, the
// largest odd number that does.
[[nodiscard]] std::vector<Plant> morePlants(const Yard& yard, const Drift& drift, int count,
                                            IdSource& ids);

}  // namespace tussock
