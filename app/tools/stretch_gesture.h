// SPDX-License-Identifier: MIT
// Drags an end of a drift: longer and narrower or shorter and broader, and where its axis points,
// with the same count. Says what the drift would break so.
#pragma once

#include "app/tools/breakage.h"
#include "app/tools/gesture.h"
#include "core/planting/reshape_drift.h"

namespace tussock {

class StretchGesture : public Gesture {
 public:
  // `side`: 1 for the end along the axis, -1 for the other.
  StretchGesture(Canvas& canvas, Id<Drift> drift, double side);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

  // Of what the drift would break there.
  [[nodiscard]] const QStringList& words() const { return breakage_.words(); }

 private:
  [[nodiscard]] DriftShape shapeAt(const PointerAt& at) const;

  Canvas& canvas_;
  Id<Drift> drift_;
  double side_;
  Point middle_;
  double box_ = 1.0;  // square metres of the smallest rectangle around the drift
  Point at_;          // of the pointer
  Breakage breakage_;
  bool dragged_ = false;
};

}  // namespace tussock
