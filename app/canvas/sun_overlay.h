// SPDX-License-Identifier: MIT
// Hours of sun laid over the plan, with the limits of the sun classes as lines.
#pragma once

#include <array>
#include <memory>
#include <QImage>
#include <QPainter>
#include <QPainterPath>

#include "app/canvas/canvas_look.h"
#include "app/canvas/scene_mapping.h"
#include "core/sun/map.h"

namespace tussock {

// Where the hours cross `level`, in site metres.
[[nodiscard]] QPainterPath contourOf(const SunMap& map, double level);

class SunOverlay {
 public:
  // The limits are the hours from which ground is part sun and full sun.
  void take(std::shared_ptr<const SunMap> map, double partFrom, double fullFrom);
  [[nodiscard]] bool empty() const { return image_.isNull(); }
  void paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) const;

 private:
  struct Contour {
    double level = 0.0;
    QPainterPath path;
  };
  void paintContour(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look,
                    const Contour& contour) const;

  Box area_;
  QImage image_;
  std::array<Contour, 2> contours_;
};

}  // namespace tussock
