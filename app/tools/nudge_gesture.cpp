// SPDX-License-Identifier: MIT
#include "app/tools/nudge_gesture.h"

#include <algorithm>

#include "app/tools/drift_count.h"
#include "app/tools/locked_drifts.h"
#include "core/checks/moved_plant.h"
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

std::optional<PlantAt> nearestPlant(const Drift& drift, Point p) {
  const auto nearest = std::ranges::min_element(
      drift.plants, {}, [p](const Plant& plant) { return distance(p, plant.at); });
  if (nearest == drift.plants.end()) return std::nullopt;
  return PlantAt{drift.id, nearest->id};
}

ChangeSet NudgeGesture::edit(Point to) const {
  return nudgePlant(canvas_.document().yard(), plant_.drift, plant_.plant, to).edit;
}

void NudgeGesture::move(const PointerAt& at) {
  dragged_ = true;
  to_ = at.site;
  const ChangeSet nudged = edit(to_);
  canvas_.show(nudged);
  judge(nudged);
}

void NudgeGesture::judge(const ChangeSet& nudged) {
  const Document& document = canvas_.document();
  const Drift* drift = driftIn(nudged, plant_.drift);
  const CheckInput input{document.yard(), document.facts()};
  breakage_ = drift ? Breakage(document, *drift,
                               findingsAt(surveyOf(input), plant_.drift, plant_.plant, to_))
                    : Breakage();
}

void NudgeGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  if (dragged_ && !tellIfLocked(canvas_, plant_.drift)) canvas_.document().commit(edit(at.site));
}

void NudgeGesture::paint(QPainter& painter, const SceneMapping&) const {
  breakage_.paint(painter, canvas_, to_);
}

}  // namespace tussock
