// SPDX-License-Identifier: MIT
// Drags the selected objects. One drift alone says what it would break where it is.
#pragma once

#include "app/tools/breakage.h"
#include "app/tools/gesture.h"

namespace tussock {

class MoveGesture : public Gesture {
 public:
  MoveGesture(Canvas& canvas, const PointerAt& from);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

  [[nodiscard]] const QStringList& words() const { return breakage_.words(); }

 private:
  void showDrift(Point step);

  Canvas& canvas_;
  PointerAt from_;
  std::vector<ObjectRef> refs_;
  std::vector<ObjectRef> moved_;
  Breakage breakage_;
  Point at_;  // of the pointer
  bool dragged_ = false;
};

}  // namespace tussock
