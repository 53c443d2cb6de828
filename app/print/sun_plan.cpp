// SPDX-License-Identifier: MIT
#include "app/print/sun_plan.h"

#include <algorithm>
#include <cmath>
#include <QPainter>
#include <QPainterPath>
#include <vector>

#include "app/canvas/items.h"
#include "app/canvas/label.h"
#include "app/canvas/sun_limits.h"
#include "app/look/hour_image.h"

namespace tussock {

namespace {

constexpr double kMapPixels = 1400.0;
constexpr double kStub = 3.0;  // pixels of a trunk that is drawn no smaller

// The cells reach up to one beyond the ground asked for, where their side does not divide it.
void paintHours(QPainter& painter, const SceneMapping& mapping, const HourGrid& grid) {
  painter.drawImage(mapping.toPixels(grid.area), hourImage(grid, UntoldCells::AsBeside));
}

QPainterPath onPicture(const Polygon& polygon, const SceneMapping& mapping) {
  return mapping.transform().map(pathOf(polygon));
}

QPainterPath bedsOf(const Yard& yard, const SceneMapping& mapping) {
  QPainterPath beds;
  for (const Bed& bed : yard.beds) beds = beds.united(onPicture(bed.outline, mapping));
  return beds;
}

void paintBeds(QPainter& painter, const SceneMapping& mapping, const Yard& yard,
               const Theme& theme) {
  for (const auto& [colour, width] : {std::pair(theme.paper, 3.5), std::pair(theme.ink, 1.5)})
    for (const Bed& bed : yard.beds)
      painter.strokePath(onPicture(bed.outline, mapping), QPen(colour, width));
}

void paintBuildings(QPainter& painter, const SceneMapping& mapping, const Yard& yard,
                    const Theme& theme) {
  CanvasLook look;
  look.theme = theme;
  for (const Building& building : yard.buildings) {
    painter.save();
    makeBuildingItem(building)->paint(painter, mapping, look);
    painter.restore();
  }
}

// Walls as they are drawn.
void paintBarriers(QPainter& painter, const SceneMapping& mapping, const Yard& yard,
                   const Theme& theme) {
  for (const Barrier& barrier : yard.barriers) {
    if (!barrier.footprint.empty()) {
      painter.strokePath(onPicture(barrier.footprint, mapping), QPen(theme.ink, 1.5));
      continue;
    }
    QPolygonF line;
    for (const Point p : barrier.line) line << mapping.toPixels(p);
    painter.setPen(QPen(theme.ink, 2.5));
    painter.drawPolyline(line);
  }
}

// Crowns as circles around their trunks.
void paintTrees(QPainter& painter, const SceneMapping& mapping, const Yard& yard,
                const Theme& theme) {
  painter.setBrush(Qt::NoBrush);
  for (const Tree& tree : yard.trees) {
    const QPointF at = mapping.toPixels(tree.at);
    const double radius = mapping.pixels(tree.crownRadius.metres());
    painter.setPen(QPen(theme.paper, 2.5));
    painter.drawEllipse(at, radius, radius);
    painter.setPen(QPen(theme.ink, 1.0, Qt::DashLine));
    painter.drawEllipse(at, radius, radius);
    painter.setPen(QPen(theme.ink, 1.5));
    const double trunk = std::max(kStub, mapping.pixels(tree.trunkDiameter.metres()) / 2.0);
    painter.setBrush(theme.paper);
    painter.drawEllipse(at, trunk, trunk);
    painter.setBrush(Qt::NoBrush);
  }
}

// The beds' names, those of small ones beside them; pixels are counted from the site's origin.
std::vector<PlacedLabel> namesOfBeds(const SceneMapping& mapping, const Yard& yard,
                                     const Theme& theme) {
  const SceneMapping fromOrigin(Point{}, mapping.scale(), QSizeF(0.0, 0.0));
  CanvasLook look;
  look.theme = theme;
  look.allNames = true;
  std::vector<Label> wishes;
  for (const Bed& bed : yard.beds) makeBedItem(bed)->addLabels(wishes, fromOrigin, look);
  std::erase_if(wishes, [](const Label& label) { return !label.names; });
  return placeLabels(std::move(wishes), {});
}

void paintNames(QPainter& painter, const SceneMapping& mapping, std::vector<PlacedLabel>& names,
                const Theme& theme) {
  const QPointF origin = mapping.toPixels(Point{});
  for (const PlacedLabel& name : names) paintLabelLine(painter, name, origin, theme.paper);
  for (PlacedLabel& name : names) paintLabel(painter, name, origin, theme.paper);
}

}  // namespace

SceneMapping sunPlanMapping(const SunMap& map) {
  const Box& area = map.area();
  const double scale = kMapPixels / std::max(area.width(), area.height());
  return {area.centre(), scale,
          QSizeF(std::round(area.width() * scale), std::round(area.height() * scale))};
}

void paintSunPlan(QPainter& painter, const SceneMapping& mapping, const SunMap& map,
                  const Yard& yard, const SunProfile& classes, SunGround ground) {
  const Theme theme = Theme::light();
  const HourGrid grid = hourGridOf(map);
  SunLimits limits(grid, classes, map.area());
  painter.save();
  if (ground == SunGround::Beds) painter.setClipPath(bedsOf(yard, mapping), Qt::IntersectClip);
  paintHours(painter, mapping, grid);
  limits.paintLines(painter, mapping, theme);
  painter.restore();
  paintBuildings(painter, mapping, yard, theme);
  paintBarriers(painter, mapping, yard, theme);
  paintTrees(painter, mapping, yard, theme);
  paintBeds(painter, mapping, yard, theme);
  std::vector<PlacedLabel> names = namesOfBeds(mapping, yard, theme);
  std::vector<QRectF> taken;
  for (const PlacedLabel& name : names) taken.push_back(name.box);
  limits.paintLabels(painter, mapping, theme, taken);
  paintNames(painter, mapping, names, theme);
}

}  // namespace tussock
