// SPDX-License-Identifier: MIT
#include "app/tools/band_gesture.h"

#include <algorithm>

namespace tussock {

void BandGesture::finish(const PointerAt& at) {
  Box band;
  band.include(from_.site);
  band.include(at.site);
  std::vector<ObjectRef> selected = kept_;
  for (const Item* item : canvas_.scene().within(band)) {
    const bool inside = band.contains(item->bounds().low) && band.contains(item->bounds().high);
    const bool ground = item->depth() == Depth::Photo || item->depth() == Depth::Lot;
    const bool known = std::find(kept_.begin(), kept_.end(), item->ref()) != kept_.end();
    if (inside && !ground && !known) selected.push_back(item->ref());
  }
  canvas_.document().select(std::move(selected));
}

void BandGesture::paint(QPainter& painter, const SceneMapping& mapping) const {
  const QRectF band = QRectF(mapping.toPixels(from_.site), mapping.toPixels(to_.site)).normalized();
  painter.setPen(QPen(canvas_.look().theme.sky, 1.0, Qt::DashLine));
  painter.setBrush(faded(canvas_.look().theme.sky, 0.10));
  painter.drawRect(band);
}

}  // namespace tussock
