// SPDX-License-Identifier: MIT
// Turns a drift about its middle by its handle.
#pragma once

#include "app/tools/gesture.h"

namespace tussock {

class TurnGesture : public Gesture {
 public:
  TurnGesture(Canvas& canvas, Id<Drift> drift, const PointerAt& from);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;

 private:
  [[nodiscard]] ChangeSet edit(const PointerAt& at) const;

  Canvas& canvas_;
  Id<Drift> drift_;
  Point middle_;
  Point from_;
};

}  // namespace tussock
