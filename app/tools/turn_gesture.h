// SPDX-License-Identifier: MIT
// Turns a drift about its middle by its handle, and says what it would break so.
#pragma once

#include "app/tools/breakage.h"
#include "app/tools/gesture.h"

namespace tussock {

class TurnGesture : public Gesture {
 public:
  TurnGesture(Canvas& canvas, Id<Drift> drift, const PointerAt& from);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

  // Of what the drift would break there.
  [[nodiscard]] const QStringList& words() const { return breakage_.words(); }

 private:
  [[nodiscard]] ChangeSet edit(const PointerAt& at) const;

  Canvas& canvas_;
  Id<Drift> drift_;
  Point middle_;
  Point from_;
  Point at_;  // of the pointer
  Breakage breakage_;
};

}  // namespace tussock
