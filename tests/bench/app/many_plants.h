// SPDX-License-Identifier: MIT
// Yards of any number of plants, and a canvas that shows one.
#pragma once

#include <QTemporaryDir>

#include "app/canvas/canvas.h"
#include "core/model/yard.h"

namespace tussock::bench {

inline constexpr int kPlantsInBed = 250;  // in 25 drifts

// Beds of 7 x 5 m, eight to a row.
[[nodiscard]] Yard bedsOfPlants(int beds, const Catalogue& facts);
// One bed with that many drifts of ten, and room for more between them.
[[nodiscard]] Yard bedWithDrifts(int drifts, const Catalogue& facts);

// 1920 x 1080, everything in view, background work done.
class ShownYard {
 public:
  ShownYard();
  explicit ShownYard(const Yard& yard);

  void take(const Yard& yard);
  void settle();                       // until the background work is done and painted
  void frame() { canvas_.repaint(); }  // one, now
  void wheel(int notches);             // at the middle
  void startPan();
  void pan(QPointF pixels);  // by mouse

  [[nodiscard]] Document& document() { return document_; }
  [[nodiscard]] Canvas& canvas() { return canvas_; }

 private:
  QTemporaryDir folder_;
  Document document_;
  Canvas canvas_;
  QPointF pointer_{960.0, 540.0};
};

}  // namespace tussock::bench
