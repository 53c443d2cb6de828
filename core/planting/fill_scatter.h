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

struct ScatterRequest {
  double plants = 0.0;    // to be left, about
  bool proposed = false;  // nobody asked for each of the species
  // Of them so many of each species that was asked for, less what stands there already.
  std::map<std::string, double> ofSpecies{};
};
// Some of the drifts, nearer the people who look rather than farther: bare soil shows there, and
// what is low is seen. The last of a species is made smaller, to an odd count, where it is too
// large; of each that was asked for there is one plant at least.
[[nodiscard]] std::vector<KeptDrift> scattered(std::vector<KeptDrift> drifts,
                                               ScatterRequest request, const FillGround& ground,
                                               Chance& chance);

}  // namespace tussock
