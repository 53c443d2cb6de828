// SPDX-License-Identifier: MIT
#include "core/planting/fill_tries.h"

#include <algorithm>
#include <cmath>

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

std::chrono::milliseconds usualTimeFor(Area bed) {
  constexpr double kUsual = 20.0, kMost = 90.0;      // seconds
  constexpr double kEach = 0.008, kLarge = 1'500.0;  // seconds a square metre, from so many
  const double more = kEach * std::max(0.0, bed.squareMetres() - kLarge);
  return std::chrono::milliseconds(std::lround(1000.0 * std::min(kMost, kUsual + more)));
}

}  // namespace tussock
