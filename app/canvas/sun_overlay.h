// SPDX-License-Identifier: MIT
// Hours of sun laid over the plan, with the limits of the sun classes as labelled lines.
#pragma once

#include <QImage>
#include <QPainter>
#include <vector>

#include "app/canvas/canvas_look.h"
#include "app/canvas/scene_mapping.h"
#include "app/canvas/sun_limits.h"
#include "core/catalog/fit.h"
#include "core/sun/hour_grid.h"

namespace tussock {

class SunOverlay {
 public:
  // Nothing is shown beyond `ground`, which the cells may reach past.
  void take(const HourGrid& grid, const SunProfile& profile, const Box& ground);
  void clear();
  [[nodiscard]] bool empty() const { return image_.isNull(); }
  // Its words keep clear of the boxes that are taken, in pixels from the site's origin.
  void paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look,
             const std::vector<QRectF>& taken);
  [[nodiscard]] const std::vector<PlacedLabel>& labels() const { return limits_.labels(); }

 private:
  Box area_, ground_;
  QImage image_;
  SunLimits limits_;
};

}  // namespace tussock
