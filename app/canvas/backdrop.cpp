// SPDX-License-Identifier: MIT
#include "app/canvas/backdrop.h"

#include <array>
#include <cmath>

#include "app/canvas/item.h"

namespace tussock {

namespace {

void paintLines(QPainter& painter, const SceneMapping& mapping, double step, const QColor& ink) {
  const Box seen = mapping.visible();
  painter.setPen(QPen(ink, 1.0));
  for (double x = std::ceil(seen.low.x / step) * step; x <= seen.high.x; x += step) {
    const double at = std::round(mapping.toPixels(Point{x, 0.0}).x()) + 0.5;
    painter.drawLine(QPointF(at, 0.0), QPointF(at, mapping.view().height()));
  }
  for (double y = std::ceil(seen.low.y / step) * step; y <= seen.high.y; y += step) {
    const double at = std::round(mapping.toPixels(Point{0.0, y}).y()) + 0.5;
    painter.drawLine(QPointF(0.0, at), QPointF(mapping.view().width(), at));
  }
}

}  // namespace

double gridStep(const SceneMapping& mapping, UnitSystem units, double leastPixels) {
  const double unit = units == UnitSystem::FeetInches ? kMetresPerFoot : 1.0;
  for (double decade = 1.0; decade < 1e6; decade *= 10.0)
    for (const double step : {1.0, 5.0})
      if (mapping.pixels(unit * decade * step) >= leastPixels) return unit * decade * step;
  return unit * 1e6;
}

void paintPaper(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) {
  painter.fillRect(QRectF(QPointF(), mapping.view()), look.theme.paper);
}

void paintGrid(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  const double fine = gridStep(mapping, look.units, 14.0);
  const double coarse = gridStep(mapping, look.units, 60.0);
  const double strength = look.theme.dark ? 0.42 : 0.50;
  const double thin = std::min(1.0, (mapping.pixels(fine) - 10.0) / 40.0);
  if (fine < coarse)
    paintLines(painter, mapping, fine, faded(look.theme.line, strength * 0.55 * thin));
  paintLines(painter, mapping, coarse, faded(look.theme.line, strength));
  painter.restore();
}

}  // namespace tussock
