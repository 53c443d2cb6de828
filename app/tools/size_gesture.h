// SPDX-License-Identifier: MIT
// Raises or lowers what stands by its upper handle, or widens a tree's crown by its rim.
#pragma once

#include "app/tools/gesture.h"

namespace tussock {

enum class SizeKind { Height, Crown };

// Whether the object has a height to be dragged.
[[nodiscard]] bool stands(const Object& object);

class SizeGesture : public Gesture {
 public:
  SizeGesture(Canvas& canvas, ObjectRef ref, SizeKind kind, const PointerAt& from);
  void move(const PointerAt& at) override;
  void finish(const PointerAt& at) override;

 private:
  [[nodiscard]] std::optional<Object> changed(const PointerAt& at) const;
  [[nodiscard]] ChangeSet edit(const PointerAt& at) const;
  void tell(const Object& now) const;

  Canvas& canvas_;
  ObjectRef ref_;
  SizeKind kind_;
  QPointF from_;
  bool dragged_ = false;
};

}  // namespace tussock
