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

}  // namespace tussock::test
