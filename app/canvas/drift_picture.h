// SPDX-License-Identifier: MIT
// A small drift painted once for a scale and look, so that painting the yard again lays pictures
// side by side. Soft edges cost far more than the symbols within them.
#pragma once

#include <functional>
#include <QPainter>
#include <QPixmap>

#include "app/canvas/scene_mapping.h"
#include "app/look/glyphs.h"

namespace tussock {

class DriftPicture {
 public:
  struct Look {
    GlyphLook glyph;
    double radius = 0.0;  // metres, of a symbol
    QColor ink;
    bool dark = false;

    bool operator==(const Look&) const = default;
  };
  using Paint = std::function<void(QPainter&, const SceneMapping&)>;

  // Lays down what `paint` draws within `box`, in pixels; calls it only when the scale, the look or
  // the place between two pixels is another than before. Large drifts are painted each time.
  void lay(QPainter& painter, const QRectF& box, const SceneMapping& mapping, const Look& look,
           const Paint& paint);

 private:
  [[nodiscard]] bool suits(double scale, double dpr, QPointF within, const Look& look) const;

  QPixmap picture_;
  double scale_ = 0.0;
  QPointF within_;  // of a pixel, where the box's corner lies
  Look look_;
};

}  // namespace tussock
