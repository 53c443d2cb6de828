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
#include "core/sun/contours.h"
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
  [[nodiscard]] const std::vector<PlacedLabel>& labels() const { return labels_; }

 private:
  struct Limit {
    double hours = 0.0;
    QPainterPath path;  // site metres
    std::vector<ContourLine> lines;
  };
  void addLimit(const HourGrid& grid, double hours);
  void paintLines(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look) const;
  void placeLabels(const SceneMapping& mapping, const CanvasLook& look);
  void labelLine(const ContourLine& line, const Label& words, const SceneMapping& mapping);

  Box area_, ground_;
  QImage image_;
  std::vector<Limit> limits_;
  // Placed once for a scale, in pixels from the site's origin.
  std::vector<PlacedLabel> labels_;
  std::vector<QRectF> taken_;
  double labelScale_ = 0.0;
  bool labelDark_ = false;
};

}  // namespace tussock
