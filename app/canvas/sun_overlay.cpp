// SPDX-License-Identifier: MIT
#include "app/canvas/sun_overlay.h"

#include <algorithm>
#include <optional>

#include "app/canvas/item.h"
#include "app/look/sun_scale.h"

namespace tussock {

namespace {

constexpr double kStrength = 0.66;  // of the map over the plan

struct Corner {
  Point at;
  double hours = 0.0;
};

// Where the level lies between two neighbouring cells.
std::optional<Point> crossing(const Corner& a, const Corner& b, double level) {
  if ((a.hours < level) == (b.hours < level)) return std::nullopt;
  const double share = (level - a.hours) / (b.hours - a.hours);
  return a.at + (b.at - a.at) * share;
}

void addTriangle(QPainterPath& path, const std::array<Corner, 3>& corners, double level) {
  std::vector<Point> ends;
  for (std::size_t i = 0; i < 3; ++i)
    if (const auto p = crossing(corners[i], corners[(i + 1) % 3], level)) ends.push_back(*p);
  if (ends.size() != 2) return;
  path.moveTo(ends[0].x, ends[0].y);
  path.lineTo(ends[1].x, ends[1].y);
}

QImage imageOf(const SunMap& map) {
  QImage image(map.columns(), map.rows(), QImage::Format_ARGB32_Premultiplied);
  const QList<QRgb> ramp = sunRamp();
  for (int row = 0; row < map.rows(); ++row) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(map.rows() - 1 - row));
    for (int column = 0; column < map.columns(); ++column) {
      const double hours = map.at(column, row).total();
      const auto step = std::clamp<qsizetype>(qsizetype(hours * 10.0 + 0.5), 0, ramp.size() - 1);
      line[column] = map.underBuilding(column, row) ? qRgba(0, 0, 0, 0) : ramp[step] | 0xFF000000u;
    }
  }
  return image;
}

}  // namespace

QPainterPath contourOf(const SunMap& map, double level) {
  QPainterPath path;
  const auto corner = [&](int column, int row) {
    return Corner{map.centreOf(column, row), map.at(column, row).total()};
  };
  for (int row = 0; row + 1 < map.rows(); ++row)
    for (int column = 0; column + 1 < map.columns(); ++column) {
      if (map.underBuilding(column, row) || map.underBuilding(column + 1, row) ||
          map.underBuilding(column, row + 1) || map.underBuilding(column + 1, row + 1))
        continue;
      const Corner a = corner(column, row), b = corner(column + 1, row),
                   c = corner(column + 1, row + 1), d = corner(column, row + 1);
      addTriangle(path, {a, b, c}, level);
      addTriangle(path, {a, c, d}, level);
    }
  return path;
}

void SunOverlay::take(std::shared_ptr<const SunMap> map, double partFrom, double fullFrom) {
  image_ = QImage();
  if (!map || map->empty()) return;
  area_ = map->area();
  // The grid may end a little beyond the area asked for.
  area_.high =
      area_.low + Point{map->columns() * map->cell().metres(), map->rows() * map->cell().metres()};
  image_ = imageOf(*map);
  contours_ = {Contour{partFrom, contourOf(*map, partFrom)},
               Contour{fullFrom, contourOf(*map, fullFrom)}};
}

void SunOverlay::paint(QPainter& painter, const SceneMapping& mapping,
                       const CanvasLook& look) const {
  if (empty()) return;
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setOpacity(kStrength);
  painter.drawImage(mapping.toPixels(area_), image_);
  painter.restore();
  for (const Contour& contour : contours_) paintContour(painter, mapping, look, contour);
}

void SunOverlay::paintContour(QPainter& painter, const SceneMapping& mapping,
                              const CanvasLook& look, const Contour& contour) const {
  if (contour.path.isEmpty()) return;
  painter.save();
  painter.setTransform(mapping.transform(), true);
  painter.strokePath(contour.path, linePen(faded(look.theme.ink, 0.75), 1.2));
  painter.restore();
  const QPointF site = contour.path.elementAt(contour.path.elementCount() / 2);
  QFont font = fontFor(TextRole::Note);
  font.setWeight(QFont::Bold);
  Label label{{QObject::tr("%1 h").arg(contour.level)}, font, {}, look.theme.ink};
  label.middle = mapping.toPixels(Point{site.x(), site.y()});
  for (PlacedLabel& placed : placeLabels({label}, {}))
    paintLabel(painter, placed, {}, look.theme.paper);
}

}  // namespace tussock
