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

// Of the bed, beside the main layer.
double freeShare(const Yard& flat, const Bed& bed, double spacing) {
  const double size = cellSizeFor(bed, spacing);
  Bed open = bed;
  open.setback.reset();
  Yard alone;
  alone.settings = flat.settings, alone.beds = flat.beds;
  const double whole = cellsIn(alone, open, 0.0, size);
  const bool setBack = bed.setback && bed.setback->metres() > spacing / 2.0;
  const double free = setBack ? cellsIn(flat, bed, spacing, size) : cellsIn(flat, open, 0.0, size);
  return whole > 0.0 ? free / whole : 1.0;
}

}  // namespace

Area freeGround(const Yard& yard, const Bed& bed, double spacing) {
  Yard bare = laidFlat(yard);
  bare.drifts = {};
  return surfaceOf(yard, bed) * freeShare(bare, *bare.beds.find(bed.id), spacing);
}

double groundLeft(const Yard& flat, const Bed& bed, double spacing) {
  return areaOf(bed.outline).squareMetres() * freeShare(flat, bed, spacing);
}

}  // namespace tussock
