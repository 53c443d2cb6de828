// SPDX-License-Identifier: MIT
#include "core/planting/fill_gaps.h"

#include <algorithm>
#include <cmath>
#include <numbers>

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

}  // namespace

std::optional<double> takenWithoutGaps(const Yard& yard, const Yard& flat, Id<Bed> id,
                                       double spacing) {
  // Spacings across. In a lattice a plant leaves a hole 1.0 wide, as many a corner is anyway; three
  // leave one of 2 (2/√3 - 1/2) = 1.31.
  constexpr double kHole = 1.25;
  const Bed& bed = *yard.beds.find(id);
  const Bed& level = *flat.beds.find(id);
  const FillGround gaps(flat, level, Layer::Main, spacing, cellSizeFor(level, spacing));
  const double taken = totalsOf(yard, bed).taken.squareMetres();
  if (gaps.width() >= kHole * std::max(spacing, spacingThere(yard, id, taken))) return std::nullopt;
  const double share = taken / std::max(1e-6, freeGround(yard, bed, spacing).squareMetres());
  if (share < kLeastGroundTaken) return std::nullopt;
  return share;
}

}  // namespace tussock
