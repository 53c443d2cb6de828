// SPDX-License-Identifier: MIT
#include "app/canvas/canvas_look.h"

#include <algorithm>

#include "core/catalog/season_weeks.h"

namespace tussock {

double cover(const CanvasLook& look, double overPhoto) {
  return look.tracing ? overPhoto : 1.0;
}

double seasonShare(const Species& species, const CanvasLook& look) {
  if (!look.week || species.habit == Habit::Shrub) return 1.0;
  constexpr int kSprout = 11, kGrown = 22, kLeast = 55;  // weeks of the north; percent of full size
  const int week = northernWeek(*look.week, look.facts.hemisphere());
  const int grown = std::clamp(week, kSprout, kGrown) - kSprout;
  const double spring = kLeast + (100.0 - kLeast) * grown / (kGrown - kSprout);
  return (week < kSprout ? 80.0 : spring) / 100.0;  // last year's stems stand through the winter
}

}  // namespace tussock
