// SPDX-License-Identifier: MIT
// Who judges a planting from outside: the checks, which a fill itself knows nothing of.
#pragma once

#include <functional>
#include <vector>

#include "core/model/yard.h"

namespace tussock {

struct FillVerdict {
  double cost = 0.0;                 // 0 when nothing is found; about 1 for a hint
  std::vector<Id<Drift>> concerned;  // drifts that something was found about
};
using FillJudge = std::function<FillVerdict(const Yard&)>;

}  // namespace tussock
