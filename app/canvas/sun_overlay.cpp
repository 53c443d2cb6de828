// SPDX-License-Identifier: MIT
#include "app/canvas/sun_overlay.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QLocale>

#include "app/canvas/item.h"
#include "app/look/hour_image.h"
#include "core/sun/contours.h"

namespace tussock {

namespace {

constexpr double kStrength = 0.66;       // of the map over the plan
constexpr double kLabelledFrom = 110.0;  // pixels: shorter lines carry no label
constexpr double kShortest = 2.5;  // metres: smaller islands are trunks and noise of the cells

void addTo(QPainterPath& path, const ContourLine& line) {
  path.moveTo(line.points.front().x, line.points.front().y);
  for (std::size_t i = 1; i < line.points.size(); ++i)
    path.lineTo(line.points[i].x, line.points[i].y);
  if (line.closed) path.closeSubpath();
}

}  // namespace

void SunOverlay::clear() {
  image_ = QImage();
  limits_.clear();
  labelScale_ = 0.0;
}

void SunOverlay::take(const HourGrid& grid, const SunProfile& profile) {
  clear();
  if (grid.empty()) return;
  area_ = grid.area;
  image_ = hourImage(grid, UntoldCells::Clear);
  addLimit(grid, profile.partFrom);
  addLimit(grid, profile.fullFrom);
}

void SunOverlay::addLimit(const HourGrid& grid, double hours) {
  Limit limit{hours, {}, {}};
  for (const ContourLine& line : contoursOf(grid, hours)) {
    const double length = lengthOf(line);
    if (length < kShortest) continue;
    addTo(limit.path, line);
    limit.stretches.push_back({middleOf(line), length});
  }
  limits_.push_back(std::move(limit));
}

void SunOverlay::paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) {
  if (empty()) return;
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setOpacity(kStrength);
  painter.drawImage(mapping.toPixels(area_), image_);
  painter.restore();
  paintLines(painter, mapping, look);
  if (labelScale_ != mapping.scale() || labelDark_ != look.theme.dark) placeLabels(mapping, look);
  const QPointF origin = mapping.toPixels(Point{});
  for (PlacedLabel& placed : labels_) paintLabel(painter, placed, origin, look.theme.paper);
}

// A light line under a dark one, so that both show on either end of the scale.
void SunOverlay::paintLines(QPainter& painter, const SceneMapping& mapping,
                            const CanvasLook& look) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setTransform(mapping.transform(), true);
  for (const Limit& limit : limits_) {
    if (limit.path.isEmpty()) continue;
    painter.strokePath(limit.path, linePen(faded(look.theme.paper, 0.55), 3.2));
    painter.strokePath(limit.path, linePen(faded(look.theme.ink, 0.85), 1.2));
  }
  painter.restore();
}

void SunOverlay::placeLabels(const SceneMapping& mapping, const CanvasLook& look) {
  const SceneMapping fromOrigin(Point{}, mapping.scale(), QSizeF(0.0, 0.0));
  QFont font = fontFor(TextRole::Note);
  font.setWeight(QFont::Bold);
  std::vector<Label> wishes;
  for (const Limit& limit : limits_)
    for (const Limit::Stretch& stretch : limit.stretches) {
      if (mapping.pixels(stretch.length) < kLabelledFrom) continue;
      Label label{{QCoreApplication::translate("Sun", "%1 h").arg(QLocale().toString(limit.hours))},
                  font,
                  {},
                  look.theme.ink};
      label.middle = fromOrigin.toPixels(stretch.middle);
      label.weight = stretch.length;
      wishes.push_back(std::move(label));
    }
  labels_ = tussock::placeLabels(std::move(wishes), {});
  labelScale_ = mapping.scale();
  labelDark_ = look.theme.dark;
}

}  // namespace tussock
