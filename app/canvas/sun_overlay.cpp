// SPDX-License-Identifier: MIT
#include "app/canvas/sun_overlay.h"

#include "app/look/hour_image.h"
#include "app/look/sun_scale.h"

namespace tussock {

void SunOverlay::clear() {
  image_ = QImage();
  limits_ = SunLimits();
}

void SunOverlay::take(const HourGrid& grid, const SunProfile& profile, const Box& ground) {
  clear();
  if (grid.empty()) return;
  area_ = grid.area;
  ground_ = ground;
  image_ = hourImage(grid, UntoldCells::Clear);
  limits_ = SunLimits(grid, profile, ground);
}

void SunOverlay::paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look,
                       const std::vector<QRectF>& taken) {
  if (empty()) return;
  painter.save();
  painter.setClipRect(mapping.toPixels(ground_), Qt::IntersectClip);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setOpacity(sunMapStrength(look.theme));
  painter.drawImage(mapping.toPixels(area_), image_);
  painter.setOpacity(1.0);
  limits_.paintLines(painter, mapping, look.theme);
  painter.restore();
  limits_.paintLabels(painter, mapping, look.theme, taken);
}

}  // namespace tussock
