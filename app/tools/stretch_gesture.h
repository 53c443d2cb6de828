// SPDX-License-Identifier: MIT
// Drags an end of a drift: longer and narrower or shorter and broader, and where its axis points,
// with the same count.
#pragma once

#include "app/tools/gesture.h"
#include "core/planting/reshape_drift.h"

namespace tussock {

class StretchGesture : public Gesture {
 public:
  // `side`: 1 for the end along the axis, -1 for the other.
  StretchGesture(Canvas& canvas, Id<Drift> drift, double side);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;

 private:
  [[nodiscard]] DriftShape shapeAt(const PointerAt& at) const;

  Canvas& canvas_;
  Id<Drift> drift_;
  double side_;
  Point middle_;
  double box_ = 1.0;  // square metres of the smallest rectangle around the drift
  bool dragged_ = false;
};

}  // namespace tussock
