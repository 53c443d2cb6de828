// SPDX-License-Identifier: MIT
// Hours of sun laid over the plan, with the limits of the sun classes as labelled lines.
#pragma once

#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <vector>

#include "app/canvas/canvas_look.h"
#include "app/canvas/label.h"
#include "app/canvas/scene_mapping.h"
#include "core/catalog/fit.h"
#include "core/sun/hour_grid.h"

namespace tussock {

class SunOverlay {
 public:
  void take(const HourGrid& grid, const SunProfile& profile);
  void clear();
  [[nodiscard]] bool empty() const { return image_.isNull(); }
  void paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);

 private:
  struct Limit {
    double hours = 0.0;
    QPainterPath path;  // site metres
    struct Stretch {
      Point middle;
      double length = 0.0;  // metres
    };
    std::vector<Stretch> stretches;
  };
  void addLimit(const HourGrid& grid, double hours);
  void paintLines(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) const;
  void placeLabels(const SceneMapping& mapping, const CanvasLook& look);

  Box area_;
  QImage image_;
  std::vector<Limit> limits_;
  // Placed once for a scale, in pixels from the site's origin.
  std::vector<PlacedLabel> labels_;
  double labelScale_ = 0.0;
  bool labelDark_ = false;
};

}  // namespace tussock
