// SPDX-License-Identifier: MIT
// Places on the ground that are free for a plant, taken one by one.
#pragma once

#include <vector>

#include "core/planting/disc_grid.h"
#include "core/planting/front.h"

namespace tussock {

class FreeSpots {
 public:
  // `apart`: metres that the plants taken here keep from each other.
  FreeSpots(const Ground& ground, double apart);

  [[nodiscard]] bool fits(Point p) const;
  void take(Point p);
  // A coming plant keeps this from those taken.
  void keepApart(double metres) { apart_ = metres; }
  [[nodiscard]] const std::vector<Point>& places() const { return places_; }

 private:
  const Ground& ground_;
  double apart_;
  double widest_ = 0.0;
  DiscGrid grid_;  // the neighbours, then the places
  std::vector<Point> places_;
};

// Points over the ground on a square grid, `step` metres or more apart (at most some 20,000), those
// nearest in the figure's distance first.
[[nodiscard]] std::vector<Point> gridOver(const Ground& ground, double step,
                                          const DriftFigure& figure);

}  // namespace tussock
