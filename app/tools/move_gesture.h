// SPDX-License-Identifier: MIT
// Drags the selected objects.
#pragma once

#include "app/tools/gesture.h"
#include "core/model/drift.h"

namespace tussock {

class MoveGesture : public Gesture {
 public:
  MoveGesture(Canvas& canvas, const PointerAt& from);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;

 private:
  void showDrift(Point step);

  Canvas& canvas_;
  PointerAt from_;
  std::vector<ObjectRef> refs_;
  std::vector<ObjectRef> moved_;
  bool dragged_ = false;
};

}  // namespace tussock
