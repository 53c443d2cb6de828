// SPDX-License-Identifier: MIT
#include "app/canvas/drift_picture.h"

#include <cmath>

namespace tussock {

namespace {
constexpr double kLargest = 128.0 * 128.0;  // device pixels; 64 kB
constexpr double kHardlyMoved = 0.02;       // pixels: nearer than this counts as the same place
}  // namespace

void DriftPicture::lay(QPainter& painter, const QRectF& box, const SceneMapping& mapping,
                       const Look& look, const Paint& paint) {
  const double dpr = painter.device()->devicePixelRatioF();
  const QPointF corner(std::floor(box.left()), std::floor(box.top()));
  const QSize size(int(box.right() - corner.x()) + 1, int(box.bottom() - corner.y()) + 1);
  const bool small = size.width() * dpr * (size.height() * dpr) <= kLargest;
  if (!small || std::floor(dpr) != dpr) {
    picture_ = {};
    return paint(painter, mapping);
  }
  const QPointF within = box.topLeft() - corner;
  if (!suits(mapping.scale(), dpr, within, look)) {
    picture_ = QPixmap(size * dpr);
    picture_.setDevicePixelRatio(dpr);
    picture_.fill(Qt::transparent);
    QPainter own(&picture_);
    own.setRenderHints(painter.renderHints());
    paint(own, mapping.panned(-corner));
    scale_ = mapping.scale(), within_ = within, look_ = look;
  }
  painter.drawPixmap(corner.toPoint(), picture_);
}

bool DriftPicture::suits(double scale, double dpr, QPointF within, const Look& look) const {
  return !picture_.isNull() && scale == scale_ && dpr == picture_.devicePixelRatio() &&
         std::abs(within.x() - within_.x()) < kHardlyMoved &&
         std::abs(within.y() - within_.y()) < kHardlyMoved && look == look_;
}

}  // namespace tussock
