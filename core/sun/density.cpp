// SPDX-License-Identifier: MIT
#include "core/sun/density.h"

#include <cmath>

namespace tussock {

namespace {
constexpr double kWhole = 0x1p40;
}

Density densityOf(double openness) {
  if (openness >= 1.0) return 0;
  if (!(openness > 0x1p-64)) return kOpaque;
  return std::llround(-std::log2(openness) * kWhole);
}

double Keeping::lost(Density density) {
  return density >= kOpaque ? 1.0 : 1.0 - std::exp2(-static_cast<double>(density) / kWhole);
}

}  // namespace tussock
