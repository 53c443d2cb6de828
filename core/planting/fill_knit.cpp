// SPDX-License-Identifier: MIT
#include "core/planting/fill_knit.h"

#include <algorithm>
#include <cmath>

#include "core/planting/fill_spots.h"

namespace tussock {

namespace {

using Neighbours = std::vector<std::vector<std::size_t>>;

Neighbours neighboursOf(const FillGround& ground, const Owners& owners, std::size_t count) {
  Neighbours result(count);
  for (const auto& [a, b] : touchingCells(ground, owners)) {
    result[a].push_back(b);
    result[b].push_back(a);
  }
  return result;
}

// How little the drifts lie past each other: what each lacks to two neighbours.
std::size_t lacking(const Neighbours& neighbours) {
  std::size_t sum = 0;
  for (const auto& beside : neighbours) sum += 2 - std::min<std::size_t>(2, beside.size());
  return sum;
}

// Ground that has gone to others than asked for, as a share.
double misplaced(const FillGround& ground, const std::vector<DriftCell>& cells,
                 const Owners& owners) {
  std::vector<double> areas(cells.size(), 0.0);
  for (const std::int32_t owner : owners)
    if (owner >= 0) areas[static_cast<std::size_t>(owner)] += ground.cellArea();
  double sum = 0.0;
  for (std::size_t i = 0; i < cells.size(); ++i) sum += std::abs(areas[i] - cells[i].area);
  return sum / std::max(1e-6, ground.area());
}

void disturb(DriftCell& cell, Chance& chance) {
  constexpr double kTurn = 0.25;  // radians to each side
  constexpr double kShift = 0.7;  // of the root of its area
  const double far = kShift * std::sqrt(std::max(cell.area, 0.0));
  cell.lean = cell.lean + Angle::radians(chance.between(-kTurn, kTurn));
  cell.middle += Point{chance.between(-far, far), chance.between(-far, far)};
}

// The ones that lack a neighbour, and what lies beside them.
void disturbAround(std::vector<DriftCell>& cells, const Neighbours& neighbours, Chance& chance) {
  std::vector<char> moves(cells.size(), 0);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (neighbours[i].size() >= 2) continue;
    moves[i] = 1;
    for (const std::size_t beside : neighbours[i]) moves[beside] = 1;
  }
  for (std::size_t i = 0; i < cells.size(); ++i)
    if (moves[i] != 0) disturb(cells[i], chance);
}

}  // namespace

void knit(const FillGround& ground, const DriftCells& sharing, std::vector<DriftCell>& cells,
          Owners& owners, Chance& chance, const WorkWatch& watch) {
  constexpr std::size_t kMostDrifts = 60;
  constexpr int kTries = 24, kRounds = 14;
  constexpr double kMoreMisplaced = 0.02;
  if (cells.size() < 3 || cells.size() > kMostDrifts) return;
  Neighbours neighbours = neighboursOf(ground, owners, cells.size());
  std::size_t lacks = lacking(neighbours);
  const double most = misplaced(ground, cells, owners) + kMoreMisplaced;
  for (int i = 0; i < kTries && lacks > 0 && !watch.halt(); ++i) {
    std::vector<DriftCell> tried = cells;
    disturbAround(tried, neighbours, chance);
    const Owners shared = sharing.share(tried, kRounds, watch);
    const Neighbours now = neighboursOf(ground, shared, cells.size());
    if (lacking(now) >= lacks || misplaced(ground, tried, shared) > most) continue;
    cells = std::move(tried), owners = shared, neighbours = now, lacks = lacking(now);
  }
}

}  // namespace tussock
