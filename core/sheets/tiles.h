// SPDX-License-Identifier: MIT
// A bed that is larger than the paper, in parts with match lines. Parts meet edge to edge.
#pragma once

#include <vector>

#include "core/sheets/bed_drawing.h"

namespace tussock {

struct TileGrid {
  Orientation orientation = Orientation::Landscape;
  int columns = 1, rows = 1;
  double width = 0.0, height = 0.0;  // mm on paper of a part
  Point topLeft;                     // of the whole, in the turned frame
  int scale = 0;
  Angle turn;
  DrawingNeed need;  // of the whole
};
// Fewest parts of equal size for a drawing. Its place, scale and turn are left to be set.
[[nodiscard]] TileGrid tileGrid(const PlanSource& source, const std::vector<ScheduleRow>& rows,
                                const DrawingNeed& need);
// Cut into one more column or row.
[[nodiscard]] TileGrid finer(TileGrid grid);
// Whether every part has room for the labels of what it shows.
[[nodiscard]] bool labelsFit(const PlanSource& source, const Bed& bed, const TileGrid& grid);
// Parts without any of the bed are left out.
[[nodiscard]] std::vector<Sheet> tileSheets(const PlanSource& source, const Bed& bed,
                                            const TileGrid& grid, const Baseline& baseline);

}  // namespace tussock
