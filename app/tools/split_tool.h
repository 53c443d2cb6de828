// SPDX-License-Identifier: MIT
// Draws a line across a drift and parts it there.
#pragma once

#include "app/canvas/canvas.h"
#include "core/planting/divide_drift.h"

namespace tussock {

class SplitTool : public Tool {
 public:
  explicit SplitTool(Canvas& canvas) : canvas_(canvas) {}

  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  void press(const PointerAt& at) override;
  void move(const PointerAt& at) override;
  void release(const PointerAt& at) override;
  bool key(const QKeyEvent& event) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;
  [[nodiscard]] bool busy() const override { return from_.has_value(); }
  void cancel() override;

 private:
  void showParts();
  // The selected drift, else the one that the line crosses between most plants.
  [[nodiscard]] std::optional<Id<Drift>> crossed(Point from, Point to) const;

  Canvas& canvas_;
  std::optional<Point> from_;
  Point to_;
};

// What was added or given up to make counts odd, in words; empty when nothing was.
[[nodiscard]] QString divisionNote(const Division& division);

}  // namespace tussock
