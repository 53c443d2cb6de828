// SPDX-License-Identifier: MIT
#include "core/planting/fill_tries.h"

#include <algorithm>

namespace tussock {

double FillTries::share(double done) const {
  constexpr double kPlanned = 0.83;
  const double over = std::max(0.0, done - planned) / std::max(1, most - planned);
  return kPlanned * std::min(1.0, done / planned) + (1.0 - kPlanned) * over;
}

FillTries triesFor(double plants) {
  constexpr double kInAMoment = 1'200.0, kInSeconds = 8'000.0;  // plants
  constexpr double kMany = 4'000.0;
  constexpr int kMostPlanned = 6, kTimes = 3;
  const double each = std::max(plants, 1.0);
  FillTries tries;
  tries.planned =
      std::clamp(static_cast<int>(kInAMoment / each), plants > kMany ? 1 : 2, kMostPlanned);
  tries.most = std::clamp(static_cast<int>(kInSeconds / each), kTimes * tries.planned,
                          kTimes * kMostPlanned);
  return tries;
}

}  // namespace tussock
