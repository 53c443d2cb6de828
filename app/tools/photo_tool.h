// SPDX-License-Identifier: MIT
// Puts a photo in its place: scale by two points, turn to north by a line, or drag it.
#pragma once

#include <optional>
#include <vector>

#include "app/canvas/canvas.h"

namespace tussock {

class PhotoTool : public Tool {
 public:
  enum class Way { Scale, North, Drag };

  explicit PhotoTool(Canvas& canvas) : canvas_(canvas) {}

  [[nodiscard]] QString hint() const override;
  [[nodiscard]] QList<GestureWords> gestures() const override;
  [[nodiscard]] QStringList ways() const override;
  [[nodiscard]] int way() const override { return int(way_); }
  void setWay(int way) override;
  void press(const PointerAt& at) override;
  void move(const PointerAt& at) override;
  void release(const PointerAt& at) override;
  bool key(const QKeyEvent& event) override;
  void paint(QPainter& painter, const SceneMapping& mapping) const override;
  [[nodiscard]] bool busy() const override { return !points_.empty() || dragFrom_; }
  void cancel() override;

  // The selected photo, else the last one brought in; null when there is none.
  [[nodiscard]] const Photo* photo() const;

 private:
  void askDistance();
  void turnToNorth();
  void put(const Photo& photo, const QString& label);

  Canvas& canvas_;
  Way way_ = Way::Scale;
  std::vector<Point> points_;
  Point hover_;
  std::optional<Point> dragFrom_;
};

}  // namespace tussock
