// SPDX-License-Identifier: MIT
#include "core/planting/laid_flat.h"

namespace tussock {

namespace {

template <class T, class F>
void change(Collection<T>& collection, F&& f) {
  Collection<T> changed = collection;
  for (T object : collection) {
    f(object);
    changed = changed.with(std::move(object));
  }
  collection = std::move(changed);
}

void layFlat(Drift& drift, const Slope& slope) {
  for (Plant& plant : drift.plants) plant.at = slope.onGround(plant.at);
  drift.axis = slope.onGround(drift.axis);
}

}  // namespace

Yard laidFlat(const Yard& yard) {
  const Slope slope(yard.settings);
  if (slope.level()) return yard;
  Yard flat = yard;
  flat.settings.slope = Angle();
  const double longer = slope.stretch();
  change(flat.beds, [&](Bed& bed) { bed.outline = slope.onGround(bed.outline); });
  change(flat.patches, [&](Patch& patch) { patch.outline = slope.onGround(patch.outline); });
  change(flat.drifts, [&](Drift& drift) { layFlat(drift, slope); });
  change(flat.pavings, [&](Paving& paving) { paving.outline = slope.onGround(paving.outline); });
  change(flat.buildings, [&](Building& b) { b.footprint = slope.onGround(b.footprint); });
  change(flat.barriers, [&](Barrier& barrier) {
    for (Point& p : barrier.line) p = slope.onGround(p);
    barrier.footprint = slope.onGround(barrier.footprint);
    barrier.thickness = barrier.thickness * longer;
  });
  change(flat.trees, [&](Tree& tree) {
    tree.at = slope.onGround(tree.at);
    tree.trunkDiameter = tree.trunkDiameter * longer;
  });
  change(flat.steppingPlaces, [&](SteppingPlace& step) {
    step.at = slope.onGround(step.at);
    step.radius = step.radius * longer;
  });
  return flat;
}

}  // namespace tussock
