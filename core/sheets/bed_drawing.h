// SPDX-License-Identifier: MIT
// A bed, or one part of it, on a sheet: drifts, plants, count labels and the baseline.
#pragma once

#include <functional>
#include <vector>

#include "core/sheets/drawing.h"
#include "core/sheets/labelling.h"
#include "core/sheets/layout.h"
#include "core/sheets/stake_out.h"

namespace tussock {

// A drift and those of its plants that a sheet shows.
struct ShownDrift {
  const Drift* drift = nullptr;
  const Species* species = nullptr;
  std::string code;
  std::vector<Point> plants;

  [[nodiscard]] std::string label() const;  // "7 × ECHPUR", "4 of 7 × ECHPUR"
};
[[nodiscard]] std::vector<ShownDrift> shownDrifts(const PlanSource& source, const Bed& bed,
                                                  const std::function<bool(Point)>& shown);
[[nodiscard]] double widestLabel(const std::vector<ShownDrift>& drifts);

// The sheet's scale, turn and window are set.
void drawBed(Sheet& sheet, const PlanSource& source, const Bed& bed,
             const std::vector<ShownDrift>& drifts, const LabelMargin& margin,
             const Baseline& baseline);

}  // namespace tussock
