// SPDX-License-Identifier: MIT
#include "app/tools/part_gesture.h"

#include <algorithm>

#include "core/planting/edit_drift.h"

namespace tussock {

bool DriftPart::holds(const PlantAt& plant) const {
  return plant.drift == drift &&
         std::find(plants.begin(), plants.end(), plant.plant) != plants.end();
}

void DriftPart::paint(QPainter& painter, Canvas& canvas) const {
  const Drift* found = canvas.document().yard().drifts.find(drift);
  if (!found || plants.empty()) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(canvas.look().theme.sky, 2.0));
  constexpr double kLeastRing = 7.0;  // pixels
  const double radius =
      std::max(kLeastRing, found->spacing.metres() * 0.42 / canvas.mapping().metres(1.0));
  for (const Plant& plant : found->plants)
    if (holds({drift, plant.id}))
      painter.drawEllipse(canvas.mapping().toPixels(plant.at), radius, radius);
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
  canvas_.refreshOverlay();
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
  canvas_.show(edit(at.site));
}

void PartMoveGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  if (at.site != from_) canvas_.document().commit(edit(at.site));
}

}  // namespace tussock
