// SPDX-License-Identifier: MIT
#include "app/canvas/sun_limits.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QLocale>

#include "app/canvas/item.h"

namespace tussock {

namespace {

constexpr double kLabelledFrom = 110.0;  // pixels: shorter lines carry no label
constexpr double kLabelEvery = 520.0;    // pixels of a long line
constexpr double kShortest = 2.5;  // metres: smaller islands are trunks and noise of the cells

void addTo(QPainterPath& path, const ContourLine& line) {
  path.moveTo(line.points.front().x, line.points.front().y);
  for (std::size_t i = 1; i < line.points.size(); ++i)
    path.lineTo(line.points[i].x, line.points[i].y);
  if (line.closed) path.closeSubpath();
}

Point pointAlong(const ContourLine& line, double metres) {
  Polyline points = line.points;
  if (line.closed) points.push_back(points.front());
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double step = distance(points[i - 1], points[i]);
    if (metres <= step && step > 0.0)
      return points[i - 1] + (points[i] - points[i - 1]) * (metres / step);
    metres -= step;
  }
  return points.back();
}

}  // namespace

SunLimits::SunLimits(const HourGrid& grid, const SunProfile& profile, const Box& ground)
    : ground_(ground) {
  addLimit(grid, profile.partFrom);
  addLimit(grid, profile.fullFrom);
}

void SunLimits::addLimit(const HourGrid& grid, double hours) {
  Limit limit{hours, {}, {}};
  for (ContourLine& line : contoursOf(grid, hours)) {
    if (lengthOf(line) < kShortest) continue;
    addTo(limit.path, line);
    limit.lines.push_back(std::move(line));
  }
  limits_.push_back(std::move(limit));
}

// A light line under a dark one, so that both show on either end of the scale.
void SunLimits::paintLines(QPainter& painter, const SceneMapping& mapping,
                           const Theme& theme) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setTransform(mapping.transform(), true);
  for (const Limit& limit : limits_) {
    if (limit.path.isEmpty()) continue;
    painter.strokePath(limit.path, linePen(faded(theme.paper, 0.55), 3.2));
    painter.strokePath(limit.path, linePen(faded(theme.ink, 0.85), 1.2));
  }
  painter.restore();
}

void SunLimits::paintLabels(QPainter& painter, const SceneMapping& mapping, const Theme& theme,
                            const std::vector<QRectF>& taken) {
  if (labelScale_ != mapping.scale() || labelDark_ != theme.dark || taken_ != taken) {
    taken_ = taken;
    placeLabels(mapping, theme);
  }
  const QPointF origin = mapping.toPixels(Point{});
  for (PlacedLabel& placed : labels_) paintLabel(painter, placed, origin, theme.paper);
}

void SunLimits::placeLabels(const SceneMapping& mapping, const Theme& theme) {
  labels_.clear();
  QFont font = fontFor(TextRole::Note);
  font.setWeight(QFont::Bold);
  for (const Limit& limit : limits_) {
    const Label words{
        {QCoreApplication::translate("Sun", "%1 h").arg(QLocale().toString(limit.hours))},
        font,
        {},
        theme.ink};
    for (const ContourLine& line : limit.lines) labelLine(line, words, mapping);
  }
  labelScale_ = mapping.scale();
  labelDark_ = theme.dark;
}

// One label for each kLabelEvery pixels of the line, as near to the middle of its stretch as other
// words leave room.
void SunLimits::labelLine(const ContourLine& line, const Label& words,
                          const SceneMapping& mapping) {
  const SceneMapping fromOrigin(Point{}, mapping.scale(), QSizeF(0.0, 0.0));
  const double length = lengthOf(line);
  const double pixels = mapping.pixels(length);
  if (pixels < kLabelledFrom) return;
  const int count = std::max(1, int(std::lround(pixels / kLabelEvery)));
  for (int i = 0; i < count; ++i)
    for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9}) {
      const Point at = pointAlong(line, length * (i + share) / count);
      if (!ground_.contains(at)) continue;
      std::vector<QRectF> taken = taken_;
      for (const PlacedLabel& other : labels_) taken.push_back(other.box);
      Label label = words;
      label.middle = fromOrigin.toPixels(at);
      auto placed = tussock::placeLabels({std::move(label)}, std::move(taken));
      if (placed.empty()) continue;
      labels_.push_back(std::move(placed.front()));
      break;
    }
}

}  // namespace tussock
