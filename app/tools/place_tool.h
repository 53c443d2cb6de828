// SPDX-License-Identifier: MIT
// Tools that put one thing where one clicks: stepping places, water points.
#pragma once

#include "app/canvas/canvas.h"

namespace tussock {

class SteppingPlaceTool : public Tool {
 public:
  explicit SteppingPlaceTool(Canvas& canvas) : canvas_(canvas) {}
  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  void press(const PointerAt& at) override;

 private:
  Canvas& canvas_;
};

class WaterPointTool : public Tool {
 public:
  explicit WaterPointTool(Canvas& canvas) : canvas_(canvas) {}
  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  void press(const PointerAt& at) override;

 private:
  Canvas& canvas_;
};

}  // namespace tussock
