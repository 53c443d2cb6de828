// SPDX-License-Identifier: MIT
#include "core/planting/free_ground.h"

#include "core/planting/fill_ground.h"
#include "core/planting/laid_flat.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

double cellsIn(const Yard& yard, const Bed& bed, double spacing, double size) {
  return FillGround(yard, bed, Layer::Main, spacing, size).area();
}

}  // namespace

Area freeGround(const Yard& yard, const Bed& bed, double spacing) {
  Yard bare = laidFlat(yard);
  bare.drifts = {};
  const Bed& flat = *bare.beds.find(bed.id);
  const double size = cellSizeFor(flat, spacing);
  Bed open = flat;
  open.setback.reset();
  Yard alone;
  alone.settings = bare.settings, alone.beds = bare.beds;
  const double whole = cellsIn(alone, open, 0.0, size);
  const bool setBack = flat.setback && flat.setback->metres() > spacing / 2.0;
  const double free = setBack ? cellsIn(bare, flat, spacing, size) : cellsIn(bare, open, 0.0, size);
  return surfaceOf(yard, bed) * (whole > 0.0 ? free / whole : 1.0);
}

}  // namespace tussock
