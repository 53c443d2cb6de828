// SPDX-License-Identifier: MIT
// The shadows on the ground at one instant, as soft shapes. Where the shadows of two objects lie
// over one another the sun they let through is multiplied: two walls shade no more than one, two
// crowns more than either.
#pragma once

#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <vector>

#include "app/canvas/canvas_look.h"
#include "app/canvas/scene_mapping.h"
#include "core/model/yard.h"
#include "core/sun/position.h"

namespace tussock {

class ShadowOverlay {
 public:
  void take(const Yard& yard, const SunPosition& sun, MonthDay day);
  void clear();
  void paint(QPainter& painter, const SceneMapping& mapping, const CanvasLook& look);

 private:
  // What one object keeps off, in site metres.
  struct Cast {
    QPainterPath path;
    double openness = 0.0;
  };
  [[nodiscard]] QImage pictureFor(const SceneMapping& mapping, const Theme& theme) const;

  bool taken_ = false;
  bool dark_ = false;  // no direct sun anywhere
  std::vector<Cast> casts_;
  QPainterPath roofs_;  // seen from above, not the ground under them
  QImage picture_;
  SceneMapping pictureFor_;
  bool pictureDark_ = false;
};

}  // namespace tussock
