// SPDX-License-Identifier: MIT
// Sharing the ground among drifts: stretched weighted cells (power diagrams, Aurenhammer 1987)
// whose weights are moved until each has the area asked for. Stretched along a slant axis they come
// out long and interlock with pointed ends; a gently bent measure keeps their edges from being
// straight.
#pragma once

#include <vector>

#include "core/planting/bed_grain.h"
#include "core/planting/fill_ground.h"
#include "core/planting/fill_random.h"
#include "core/planting/fill_watch.h"

namespace tussock {

struct DriftCell {
  Point middle;
  Angle lean;            // to the grain of the bed at its middle
  double stretch = 3.0;  // length over width
  double area = 0.0;     // square metres asked for
  double weight = 0.0;   // square metres, found by sharing
};

using Owners = std::vector<std::int32_t>;  // for each cell of the ground, whose it is

class DriftCells {
 public:
  // `bend` 0 for straight edges, 1 for lively ones; `scale` metres, about the size of a drift.
  DriftCells(const FillGround& ground, const BedGrain& grain, double bend, double scale,
             Chance& chance);

  // Moves middles and weights for so many rounds; gives each cell of the ground its owner, and
  // every drift one piece. Drifts that find no room own nothing.
  // Fewer rounds when told to halt.
  [[nodiscard]] Owners share(std::vector<DriftCell>& drifts, int rounds,
                             const WorkWatch& watch) const;

 private:
  [[nodiscard]] double usualArea(std::size_t drifts) const;  // square metres
  [[nodiscard]] Owners owners(const std::vector<DriftCell>& drifts) const;
  void claim(const DriftCell& drift, std::int32_t number, double usualArea, Owners& owners,
             std::vector<double>& nearest) const;
  void fillUp(Owners& owners) const;
  void joinPieces(Owners& owners, std::size_t count) const;
  [[nodiscard]] std::vector<int> pieceOf(int cell, const Owners& owners,
                                         std::vector<char>& seen) const;

  const FillGround& ground_;
  const BedGrain& grain_;
  std::vector<Point> bent_;  // where each cell seems to lie
  std::vector<Point> turn_;  // half the angle of the grain there, as a direction; none if straight
};

// Starting points for so many drifts, spread evenly in the stretched measure.
[[nodiscard]] std::vector<Point> spreadMiddles(const FillGround& ground, std::size_t count,
                                               Angle axis, double stretch, Chance& chance);

}  // namespace tussock
