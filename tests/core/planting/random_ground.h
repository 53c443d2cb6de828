// SPDX-License-Identifier: MIT
// Random yards for the rules of planting: beds of many shapes with things in the way.
#pragma once

#include <random>

#include "core/planting/grow.h"

namespace tussock::test {

struct RandomGround {
  Yard yard;
  Id<Bed> bed;
  std::vector<GrowRequest> drops;  // to be grown one after another
};
[[nodiscard]] RandomGround randomGround(unsigned seed);

// The yard with a drift of the species' name at the places.
[[nodiscard]] Yard withDrift(const Yard& yard, const GrowRequest& request,
                             const std::vector<Point>& places, IdSource& ids);

// Expects of a drift of the main rules: an odd count, one piece, inside the bed by the set-back,
// and the least distance from each plant of its layer. Level ground.
void expectByTheRules(const Yard& yard, const Drift& drift);

}  // namespace tussock::test
