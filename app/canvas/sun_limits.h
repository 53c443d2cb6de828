// SPDX-License-Identifier: MIT
// The limits of the sun classes as labelled lines on a map of hours.
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <vector>

#include "app/canvas/label.h"
#include "app/canvas/scene_mapping.h"
#include "app/look/theme.h"
#include "core/catalog/fit.h"
#include "core/sun/contours.h"

namespace tussock {

class SunLimits {
 public:
  SunLimits() = default;
  // Words stand only on `ground`, which the cells may reach past.
  SunLimits(const HourGrid& grid, const SunProfile& profile, const Box& ground);

  void paintLines(QPainter& painter, const SceneMapping& mapping, const Theme& theme) const;
  // Keeping clear of the boxes that are taken, in pixels from the site's origin.
  void paintLabels(QPainter& painter, const SceneMapping& mapping, const Theme& theme,
                   const std::vector<QRectF>& taken);
  [[nodiscard]] const std::vector<PlacedLabel>& labels() const { return labels_; }

 private:
  struct Limit {
    double hours = 0.0;
    QPainterPath path;  // site metres
    std::vector<ContourLine> lines;
  };
  void addLimit(const HourGrid& grid, double hours);
  void placeLabels(const SceneMapping& mapping, const Theme& theme);
  void labelLine(const ContourLine& line, const Label& words, const SceneMapping& mapping);

  Box ground_;
  std::vector<Limit> limits_;
  // Placed once for a scale, in pixels from the site's origin.
  std::vector<PlacedLabel> labels_;
  std::vector<QRectF> taken_;
  double labelScale_ = 0.0;
  bool labelDark_ = false;
};

}  // namespace tussock
