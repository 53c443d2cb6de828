// SPDX-License-Identifier: MIT
#include "app/tools/nudge_gesture.h"

#include "core/planting/edit_drift.h"

namespace tussock {

std::optional<PlantAt> plantAt(const Yard& yard, Point p, double reach) {
  std::optional<PlantAt> found;
  double nearest = reach;
  for (const Drift& drift : yard.drifts)
    for (const Plant& plant : drift.plants)
      if (const double away = distance(p, plant.at); away <= nearest) {
        nearest = away;
        found = PlantAt{drift.id, plant.id};
      }
  return found;
}

ChangeSet NudgeGesture::edit(Point to) const {
  return nudgePlant(canvas_.document().yard(), plant_.drift, plant_.plant, to).edit;
}

void NudgeGesture::move(const PointerAt& at) {
  dragged_ = true;
  canvas_.show(edit(at.site));
}

void NudgeGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  if (dragged_) canvas_.document().commit(edit(at.site));
}

}  // namespace tussock
