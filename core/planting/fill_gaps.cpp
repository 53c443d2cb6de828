// SPDX-License-Identifier: MIT
#include "core/planting/fill_gaps.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/planting/disc_grid.h"
#include "core/planting/fill_ground.h"
#include "core/planting/fill_lacks.h"
#include "core/planting/free_ground.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

// Of plants of the main layer that take so many square metres, on average; metres.
double spacingThere(const Yard& yard, Id<Bed> bed, double taken) {
  std::size_t plants = 0;
  for (const Drift* drift : driftsIn(yard, bed))
    if (drift->layer == Layer::Main) plants += drift->plants.size();
  return plants == 0 ? 0.0
                     : std::sqrt(taken / static_cast<double>(plants) * 2.0 / std::numbers::sqrt3);
}

// Whether a circle so many metres across finds room between the edges and the ground of the plants.
bool hasHole(const Yard& flat, Id<Bed> id, double across) {
  const Bed& bed = *flat.beds.find(id);
  const FillGround free(flat, bed, Layer::Main, 0.0, cellSizeFor(bed, across));
  DiscGrid plants(free.box(), across);
  std::vector<double> radii;
  double widest = 0.0;
  for (const Drift* drift : driftsIn(flat, id))
    for (const Plant& plant : drift->plants) {
      if (drift->layer != Layer::Main) continue;
      plants.add(plant.at);
      radii.push_back(drift->spacing.metres() / 2.0);
      widest = std::max(widest, radii.back());
    }
  const auto isClear = [&](const FillCell& cell) {
    return static_cast<double>(cell.toEdge) >= across / 2.0 &&
           plants.near(cell.at, across / 2.0 + widest, [&](std::size_t i) {
             return distance(cell.at, plants.at(i)) >= across / 2.0 + radii[i];
           });
  };
  return std::any_of(free.cells().begin(), free.cells().end(), isClear);
}

}  // namespace

std::optional<double> takenWithoutGaps(const Yard& yard, const Yard& flat, Id<Bed> id,
                                       double spacing) {
  // Spacings across. In a lattice a plant leaves a hole 1.0 wide, as many a corner is anyway; three
  // leave one of 2 (2/√3 - 1/2) = 1.31.
  constexpr double kHole = 1.25;
  const Bed& bed = *yard.beds.find(id);
  const double taken = totalsOf(yard, bed).taken.squareMetres();
  const double across = kHole * std::max(spacing, spacingThere(yard, id, taken));
  if (hasHole(flat, id, across)) return std::nullopt;
  const double share = taken / std::max(1e-6, freeGround(yard, bed, spacing).squareMetres());
  if (share < kLeastGroundTaken) return std::nullopt;
  return share;
}

std::set<std::string> speciesIn(const Yard& yard, Id<Bed> bed) {
  std::set<std::string> species;
  for (const Drift* drift : driftsIn(yard, bed))
    if (drift->layer == Layer::Main && !drift->plants.empty()) species.insert(drift->species);
  return species;
}

}  // namespace tussock
