// SPDX-License-Identifier: MIT
#include "app/tools/part_gesture.h"

#include <algorithm>

#include "app/tools/drift_count.h"
#include "app/tools/locked_drifts.h"
#include "core/checks/moved_plant.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {

// "3 of 13" above the drift.
void tellPart(Canvas& canvas, const Drift& drift, std::size_t marked) {
  showCount(canvas, drift, QObject::tr("%1 of them in hand").arg(marked));
}

}  // namespace

bool DriftPart::holds(const PlantAt& plant) const {
  return plant.drift == drift &&
         std::find(plants.begin(), plants.end(), plant.plant) != plants.end();
}

void DriftPart::keepOnlyOf(const Drift& now) {
  std::erase_if(plants, [&](Id<Plant> id) {
    return std::none_of(now.plants.begin(), now.plants.end(),
                        [&](const Plant& plant) { return plant.id == id; });
  });
}

void DriftPart::paint(QPainter& painter, Canvas& canvas) const {
  const Drift* found = canvas.document().yard().drifts.find(drift);
  if (!found || plants.empty()) return;
  std::vector<Point> places;
  for (const Plant& plant : found->plants)
    if (holds({drift, plant.id})) places.push_back(plant.at);
  paintRings(painter, canvas.mapping(), places, found->spacing, canvas.look().theme.sky);
}

void PartBandGesture::move(const PointerAt& at) {
  to_ = at;
  Box band;
  band.include(from_.site);
  band.include(at.site);
  part_.plants.clear();
  const Drift* drift = canvas_.document().yard().drifts.find(part_.drift);
  if (!drift) return;
  for (const Plant& plant : drift->plants)
    if (band.contains(plant.at)) part_.plants.push_back(plant.id);
  tellPart(canvas_, *drift, part_.plants.size());
}

void PartBandGesture::finish(const PointerAt& at) {
  move(at);
  canvas_.clearFigure();
}

void PartBandGesture::paint(QPainter& painter, const SceneMapping& mapping) const {
  part_.paint(painter, canvas_);
  const QRectF band = QRectF(mapping.toPixels(from_.site), mapping.toPixels(to_.site)).normalized();
  painter.setPen(QPen(canvas_.look().theme.sky, 1.0, Qt::DashLine));
  painter.setBrush(faded(canvas_.look().theme.sky, 0.10));
  painter.drawRect(band);
}

ChangeSet PartMoveGesture::edit(Point to) const {
  return movePlants(canvas_.document().yard(), part_.drift, part_.plants, to - from_).edit;
}

void PartMoveGesture::move(const PointerAt& at) {
  at_ = at.site;
  breakage_ = {};
  const ChangeSet moved = edit(at.site);
  canvas_.show(moved);
  const Drift* drift = driftIn(moved, part_.drift);
  if (!drift) return;
  tellPart(canvas_, *drift, part_.plants.size());
  breakage_ = breakageOfPart(moved, *drift);
}

// Those left behind are in the way too.
Breakage PartMoveGesture::breakageOfPart(const ChangeSet& moved, const Drift& drift) const {
  const Document& document = canvas_.document();
  const Yard after = apply(document.yard(), moved);
  const CheckInput input{after, document.facts()};
  return {document, drift, findingsAt(surveyOf(input), part_.drift, part_.plants)};
}

void PartMoveGesture::paint(QPainter& painter, const SceneMapping&) const {
  breakage_.paint(painter, canvas_, at_);
}

void PartMoveGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  canvas_.clearFigure();
  if (at.site != from_ && !tellIfLocked(canvas_, part_.drift))
    canvas_.document().commit(edit(at.site));
}

}  // namespace tussock
