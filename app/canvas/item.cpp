// SPDX-License-Identifier: MIT
#include "app/canvas/item.h"

#include <algorithm>

namespace tussock {

namespace {

void addRing(QPainterPath& path, const Ring& ring) {
  if (ring.empty()) return;
  path.moveTo(ring.front().x, ring.front().y);
  for (std::size_t i = 1; i < ring.size(); ++i) path.lineTo(ring[i].x, ring[i].y);
  path.closeSubpath();
}

}  // namespace

bool Item::hit(Point p, double reach) const {
  if (!bounds_.grown(reach).contains(p)) return false;
  return std::any_of(area_.begin(), area_.end(), [&](const Polygon& part) {
    return contains(part, p) || distanceToEdge(part, p) <= reach;
  });
}

void Item::setArea(std::vector<Polygon> area) {
  area_ = std::move(area);
  bounds_ = Box{};
  shape_ = QPainterPath();
  for (const Polygon& part : area_) {
    bounds_.include(boundsOf(part));
    shape_.addPath(pathOf(part));
  }
}

QPainterPath pathOf(const Polygon& polygon) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  addRing(path, polygon.outer);
  for (const Ring& hole : polygon.holes) addRing(path, hole);
  return path;
}

QPainterPath pathOf(const Polyline& line) {
  QPainterPath path;
  if (line.empty()) return path;
  path.moveTo(line.front().x, line.front().y);
  for (std::size_t i = 1; i < line.size(); ++i) path.lineTo(line[i].x, line[i].y);
  return path;
}

QPen linePen(const QColor& colour, double pixels, Qt::PenStyle style) {
  QPen pen(colour, pixels, style, Qt::RoundCap, Qt::RoundJoin);
  pen.setCosmetic(true);
  return pen;
}

QColor faded(QColor colour, double alpha) {
  colour.setAlphaF(static_cast<float>(alpha));
  return colour;
}

}  // namespace tussock
