// SPDX-License-Identifier: MIT
#include "core/sun/asked_cells.h"

#include <algorithm>

namespace tussock {

AskedCells::AskedCells(int columns, int rows)
    : AskedCells(std::vector<std::vector<Columns>>(static_cast<std::size_t>(rows),
                                                   std::vector<Columns>{{0, columns}})) {}

AskedCells::AskedCells(std::vector<std::vector<Columns>> rows) {
  firstRuns_.reserve(rows.size() + 1);
  starts_.reserve(rows.size() + 1);
  for (std::vector<Columns>& row : rows) {
    std::sort(row.begin(), row.end(), [](Columns a, Columns b) { return a.from < b.from; });
    int cells = 0;
    for (const Columns run : row) {
      if (run.empty()) continue;
      const bool meets = runs_.size() > firstRuns_.back() && run.from <= runs_.back().to;
      const int from = meets ? std::max(run.from, runs_.back().to) : run.from;
      const int to = std::max(from, run.to);
      if (meets) {
        runs_.back().to = to;
      } else {
        runs_.push_back({from, to});
        before_.push_back(cells);
      }
      cells += to - from;
    }
    firstRuns_.push_back(runs_.size());
    starts_.push_back(starts_.back() + static_cast<std::size_t>(cells));
  }
}

}  // namespace tussock
