// SPDX-License-Identifier: MIT
// Puts a tree: press at the trunk, drag to the rim of the crown.
#pragma once

#include <optional>

#include "app/canvas/canvas.h"

namespace tussock {

class TreeTool : public Tool {
 public:
  explicit TreeTool(Canvas& canvas) : canvas_(canvas) {}
  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  void press(const PointerAt& at) override;
  void move(const PointerAt& at) override;
  void release(const PointerAt& at) override;
  bool key(const QKeyEvent& event) override;
  [[nodiscard]] bool busy() const override { return tree_.has_value(); }
  void cancel() override;

 private:
  [[nodiscard]] ChangeSet edit(Point rim) const;

  Canvas& canvas_;
  std::optional<Tree> tree_;  // in hand
};

}  // namespace tussock
