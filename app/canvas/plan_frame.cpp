// SPDX-License-Identifier: MIT
#include "app/canvas/plan_frame.h"

#include <cmath>
#include <optional>
#include <QPainter>

namespace tussock {

namespace {
constexpr double kWhole = 0.02;       // pixels: nearer than this counts as a whole pixel
constexpr double kMostStretch = 2.5;  // times larger or smaller; beyond, little can be made out
}  // namespace

const QPixmap& PlanFrame::picture(const SceneMapping& mapping, double dpr, const Paint& paint) {
  const std::optional<QPoint> shift = shiftTo(mapping, dpr);
  mapping_ = mapping;
  const QSize size(int(mapping.view().width()), int(mapping.view().height()));
  if (!shift) {
    ++wholePaintings_;
    picture_ = QPixmap(size * dpr);
    picture_.setDevicePixelRatio(dpr);
    paintRegion(QRect(QPoint(), size), paint);
  } else if (!shift->isNull()) {
    picture_.scroll(int(shift->x() * dpr), int(shift->y() * dpr), picture_.rect());
    const QRect whole(QPoint(), size);
    paintRegion(QRegion(whole).subtracted(whole.translated(*shift)), paint);
  }
  stale_ = false;
  return picture_;
}

bool PlanFrame::paintStretched(QPainter& painter, const SceneMapping& mapping,
                               const QColor& paper) const {
  const double stretch = mapping.scale() / mapping_.scale();
  const bool near = stretch <= kMostStretch && stretch >= 1.0 / kMostStretch;
  if (stale_ || !near || mapping.view() != mapping_.view()) return false;
  painter.fillRect(QRectF(QPointF(), mapping.view()), paper);
  painter.drawPixmap(mapping.toPixels(mapping_.visible()), picture_, QRectF(picture_.rect()));
  return true;
}

std::optional<QPoint> PlanFrame::shiftTo(const SceneMapping& mapping, double dpr) const {
  const bool sameLook = mapping.scale() == mapping_.scale() && mapping.view() == mapping_.view() &&
                        picture_.devicePixelRatio() == dpr;
  if (stale_ || !sameLook || std::floor(dpr) != dpr) return std::nullopt;
  const QPointF step = mapping.toPixels(Point{}) - mapping_.toPixels(Point{});
  const QPoint whole = step.toPoint();
  if (std::abs(step.x() - whole.x()) > kWhole || std::abs(step.y() - whole.y()) > kWhole)
    return std::nullopt;
  if (std::abs(whole.x()) >= mapping.view().width() ||
      std::abs(whole.y()) >= mapping.view().height())
    return std::nullopt;
  return whole;
}

void PlanFrame::paintRegion(const QRegion& region, const Paint& paint) {
  QPainter painter(&picture_);
  for (const QRect& part : region) {
    painter.save();
    painter.setClipRect(part);
    paint(painter, part);
    painter.restore();
  }
}

}  // namespace tussock
