// SPDX-License-Identifier: MIT
// One drag of the select tool, from press to release.
#pragma once

#include "app/canvas/canvas.h"

namespace tussock {

class Gesture {
 public:
  virtual ~Gesture() = default;
  virtual void move(const PointerAt& at) = 0;
  virtual void finish(const PointerAt& at) = 0;
  virtual void paint(QPainter&, const SceneMapping&) const {}
};

// A shorter drag counts as a click.
inline constexpr double kDragPixels = 4.0;

}  // namespace tussock
