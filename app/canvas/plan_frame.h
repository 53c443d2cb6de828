// SPDX-License-Identifier: MIT
// The plan as last painted. Panning moves the picture and paints only the strips that come in;
// zooming may stretch it until the wheel rests.
#pragma once

#include <functional>
#include <optional>
#include <QPixmap>
#include <QRegion>

#include "app/canvas/scene_mapping.h"

namespace tussock {

class PlanFrame {
 public:
  // Paints the plan inside the rectangle, which is also the painter's clip.
  using Paint = std::function<void(QPainter&, const QRectF&)>;

  void forget() { stale_ = true; }
  const QPixmap& picture(const SceneMapping& mapping, double dpr, const Paint& paint);
  // The last picture, stretched to suit. False, and nothing painted, when there is none that is
  // near enough in scale and still true.
  [[nodiscard]] bool paintStretched(QPainter& painter, const SceneMapping& mapping,
                                    const QColor& paper) const;
  // How many times everything had to be painted; for tests.
  [[nodiscard]] int wholePaintings() const { return wholePaintings_; }

 private:
  // By how many pixels the picture can be moved to suit the mapping; nothing when it cannot.
  [[nodiscard]] std::optional<QPoint> shiftTo(const SceneMapping& mapping, double dpr) const;
  void paintRegion(const QRegion& region, const Paint& paint);

  QPixmap picture_;
  SceneMapping mapping_;
  bool stale_ = true;
  int wholePaintings_ = 0;
};

}  // namespace tussock
