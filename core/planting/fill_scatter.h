// SPDX-License-Identifier: MIT
// The layers under the main one are planted here and there, not all over.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/planting/arrangements.h"
#include "core/planting/fill_ground.h"
#include "core/planting/fill_random.h"

namespace tussock {

// In a large bed most of the ground under the main layer stays as it is: then `ground` is cut down
// to squares here and there, nearer the people who look rather than farther, that take three times
// so many plants of `each` square metres. Small grounds are left whole.
void keepSomeGround(FillGround& ground, double plants, double each, Chance& chance);

// Some of the drifts, nearer the people who look rather than farther: bare soil shows there, and
// what is low is seen. The last of a species is made smaller, to an odd count, where it is too
// large; of each of which half a plant or more is wanted there is one at least.
// `plants`: about so many of each species.
[[nodiscard]] std::vector<KeptDrift> scattered(std::vector<KeptDrift> drifts,
                                               std::map<std::string, double> plants,
                                               const FillGround& ground, Chance& chance);

}  // namespace tussock
