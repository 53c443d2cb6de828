// SPDX-License-Identifier: MIT
#include "app/canvas/scene_mapping.h"

#include <algorithm>

namespace tussock {

SceneMapping::SceneMapping(Point middle, double pixelsPerMetre, QSizeF view)
    : middle_(middle), scale_(std::clamp(pixelsPerMetre, kLeastScale, kMostScale)), view_(view) {}

QPointF SceneMapping::toPixels(Point p) const {
  return {view_.width() / 2.0 + (p.x - middle_.x) * scale_,
          view_.height() / 2.0 - (p.y - middle_.y) * scale_};
}

QRectF SceneMapping::toPixels(const Box& box) const {
  return QRectF(toPixels(Point{box.low.x, box.high.y}), toPixels(Point{box.high.x, box.low.y}));
}

Point SceneMapping::toSite(QPointF pixels) const {
  return {middle_.x + (pixels.x() - view_.width() / 2.0) / scale_,
          middle_.y - (pixels.y() - view_.height() / 2.0) / scale_};
}

QTransform SceneMapping::transform() const {
  const QPointF origin = toPixels(Point{});
  return QTransform(scale_, 0.0, 0.0, -scale_, origin.x(), origin.y());
}

Box SceneMapping::visible() const {
  return siteOf(QRectF(QPointF(), view_));
}

Box SceneMapping::siteOf(const QRectF& pixels) const {
  Box box;
  box.include(toSite(pixels.topLeft()));
  box.include(toSite(pixels.bottomRight()));
  return box;
}

SceneMapping SceneMapping::resized(QSizeF view) const {
  return SceneMapping(middle_, scale_, view);
}

SceneMapping SceneMapping::zoomedAt(QPointF at, double factor) const {
  const SceneMapping zoomed(middle_, scale_ * factor, view_);
  return zoomed.panned(at - zoomed.toPixels(toSite(at)));
}

SceneMapping SceneMapping::panned(QPointF pixels) const {
  return centredOn({middle_.x - pixels.x() / scale_, middle_.y + pixels.y() / scale_});
}

SceneMapping SceneMapping::fitted(const Box& box, double margin) const {
  if (box.empty()) return *this;
  const double wide = std::max(40.0, view_.width() - 2.0 * margin);
  const double high = std::max(40.0, view_.height() - 2.0 * margin);
  const double least = 0.01;  // metres, so that a single point can be shown too
  const double scale =
      std::min(wide / std::max(least, box.width()), high / std::max(least, box.height()));
  return SceneMapping(box.centre(), scale, view_);
}

SceneMapping SceneMapping::centredOn(Point middle) const {
  return SceneMapping(middle, scale_, view_);
}

}  // namespace tussock
