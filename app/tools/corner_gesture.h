// SPDX-License-Identifier: MIT
// Drags one corner of an outline, or a new corner out of the middle of a side.
#pragma once

#include "app/tools/gesture.h"
#include "app/tools/outline.h"
#include "app/tools/snap.h"

namespace tussock {

class CornerGesture : public Gesture {
 public:
  // `outline` already holds the corner, new or not.
  CornerGesture(Canvas& canvas, ObjectRef ref, Outline outline, CornerAt corner,
                const PointerAt& from);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;

 private:
  [[nodiscard]] ChangeSet edit() const;

  Canvas& canvas_;
  ObjectRef ref_;
  Outline outline_;
  CornerAt corner_;
  QPointF from_;
  SnapTargets targets_;
  Snap snap_;
  bool dragged_ = false;
};

// The edit that gives the object another outline; empty when there is no such object.
[[nodiscard]] ChangeSet reshapeEdit(const Yard& yard, ObjectRef ref, const Outline& outline);

}  // namespace tussock
