// SPDX-License-Identifier: MIT
// Drifts and plants on a sheet, layer over layer.
#pragma once

#include <optional>
#include <vector>

#include "core/sheets/drawing.h"

namespace tussock {

struct DrawnDrift {
  const Drift* drift = nullptr;
  const Species* species = nullptr;  // null when the facts do not know it
  std::vector<Point> plants;         // of it, those to draw
};
// Ground covers and bulbs lie under the main layer; where a plant of it stands over one of them,
// that one is a centre mark alone, so that neither hides the other. Each plant is drawn once.
// Outlines are heavier for taller species unless a weight is given.
void addPlanting(Sheet& sheet, const std::vector<DrawnDrift>& drifts,
                 std::optional<Weight> outline = std::nullopt);

}  // namespace tussock
