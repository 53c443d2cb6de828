// SPDX-License-Identifier: MIT
#include "app/canvas/canvas_look.h"

#include <algorithm>

namespace tussock {

double cover(const CanvasLook& look, double overPhoto) {
  return look.tracing ? overPhoto : 1.0;
}

double seasonShare(const Species& species, std::optional<int> week) {
  if (!week || species.habit == Habit::Shrub) return 1.0;
  constexpr int kSprout = 11, kGrown = 22, kLeast = 55;  // weeks; percent of full size
  const int grown = std::clamp(*week, kSprout, kGrown) - kSprout;
  const double spring = kLeast + (100.0 - kLeast) * grown / (kGrown - kSprout);
  return (*week < kSprout ? 80.0 : spring) / 100.0;  // last year's stems stand through the winter
}

}  // namespace tussock
