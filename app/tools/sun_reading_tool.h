// SPDX-License-Identifier: MIT
// Notes how long the sun was seen at a point: click there and write the hours.
#pragma once

#include "app/canvas/canvas.h"

namespace tussock {

class SunReadingTool : public Tool {
 public:
  explicit SunReadingTool(Canvas& canvas) : canvas_(canvas) {}
  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  void press(const PointerAt& at) override;

 private:
  [[nodiscard]] QString take(Point at, const QString& typed);

  Canvas& canvas_;
};

}  // namespace tussock
