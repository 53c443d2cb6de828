// SPDX-License-Identifier: MIT
// Site metres to canvas pixels and back. The only place that knows the scale and that north is up.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QTransform>

#include "core/geometry/point.h"

namespace tussock {

class SceneMapping {
 public:
  static constexpr double kLeastScale = 0.04;   // pixels a metre: a lot of several kilometres
  static constexpr double kMostScale = 4000.0;  // a coin fills the canvas

  SceneMapping() = default;
  // `middle` is shown in the middle of a canvas of `view` pixels.
  SceneMapping(Point middle, double pixelsPerMetre, QSizeF view);

  [[nodiscard]] QPointF toPixels(Point p) const;
  [[nodiscard]] QRectF toPixels(const Box& box) const;
  [[nodiscard]] Point toSite(QPointF pixels) const;
  [[nodiscard]] double pixels(double metres) const { return metres * scale_; }
  [[nodiscard]] double metres(double pixels) const { return pixels / scale_; }
  [[nodiscard]] double scale() const { return scale_; }  // pixels a metre
  [[nodiscard]] Point middle() const { return middle_; }
  [[nodiscard]] QSizeF view() const { return view_; }
  [[nodiscard]] QTransform transform() const;  // site metres to pixels
  [[nodiscard]] Box visible() const;
  [[nodiscard]] Box siteOf(const QRectF& pixels) const;

  [[nodiscard]] SceneMapping resized(QSizeF view) const;
  // The site point under `at` stays there.
  [[nodiscard]] SceneMapping zoomedAt(QPointF at, double factor) const;
  [[nodiscard]] SceneMapping panned(QPointF pixels) const;  // the drawing moves by that much
  // All of `box` in view with `margin` pixels around it.
  [[nodiscard]] SceneMapping fitted(const Box& box, double margin) const;
  [[nodiscard]] SceneMapping centredOn(Point middle) const;

  bool operator==(const SceneMapping&) const = default;

 private:
  Point middle_;
  double scale_ = 40.0;
  QSizeF view_{800.0, 600.0};
};

}  // namespace tussock
