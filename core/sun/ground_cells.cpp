// SPDX-License-Identifier: MIT
#include "core/sun/ground_cells.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tussock {

namespace {

// Of a coordinate, from the grid's corner, in cells: whole at the centres.
double inCells(double metres, const Grid& grid) {
  return metres / grid.cell - 0.5;
}

int heldWithin(double place, int count) {
  return static_cast<int>(std::clamp(place, 0.0, static_cast<double>(count)));
}

double centreAt(int place, const Grid& grid) {
  return (place + 0.5) * grid.cell;
}

void addTurns(const Ring& ring, double y, const Grid& grid, std::vector<int>& turns) {
  const auto add = [&](double x) {
    const double nearest = std::round(inCells(x - grid.low.x, grid));
    for (int around = -1; around <= 2; ++around)
      turns.push_back(heldWithin(nearest + around, grid.columns));
  };
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i], b = ring[(i + 1) % ring.size()];
    if (std::max(a.y, b.y) < y || std::min(a.y, b.y) > y) continue;
    if (a.y == b.y) {
      add(a.x);
      add(b.x);
    } else {
      add(a.x + (b.x - a.x) * ((y - a.y) / (b.y - a.y)));
    }
  }
}

// Where the outline may cross a row of centres: columns before and after which all of its cells up
// to the next are alike. Each crossing is given a cell on either side more, so that rounding cannot
// put one on the wrong side.
std::vector<int> turnsAlong(const Polygon& polygon, double y, const Grid& grid) {
  std::vector<int> turns;
  addTurns(polygon.outer, y, grid, turns);
  for (const Ring& hole : polygon.holes) addTurns(hole, y, grid, turns);
  std::ranges::sort(turns);
  turns.erase(std::unique(turns.begin(), turns.end()), turns.end());
  return turns;
}

void addRuns(const Polygon& polygon, double y, const Grid& grid, std::vector<Columns>& runs) {
  const std::vector<int> turns = turnsAlong(polygon, y, grid);
  for (std::size_t i = 1; i < turns.size(); ++i)
    if (contains(polygon, {grid.low.x + centreAt(turns[i - 1], grid), y}))
      runs.push_back({turns[i - 1], turns[i]});
}

}  // namespace

AskedCells cellsUnder(const std::vector<Polygon>& polygons, const Grid& grid) {
  std::vector<std::vector<Columns>> asked(static_cast<std::size_t>(grid.rows));
  for (const Polygon& polygon : polygons) {
    const Box box = boundsOf(polygon);
    if (box.empty() || !isFinite(box.low) || !isFinite(box.high)) continue;
    const int end = heldWithin(std::floor(inCells(box.high.y - grid.low.y, grid)) + 2.0, grid.rows);
    for (int row = heldWithin(std::floor(inCells(box.low.y - grid.low.y, grid)), grid.rows);
         row < end; ++row)
      addRuns(polygon, grid.low.y + centreAt(row, grid), grid,
              asked[static_cast<std::size_t>(row)]);
  }
  return AskedCells(std::move(asked));
}

}  // namespace tussock
