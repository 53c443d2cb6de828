// SPDX-License-Identifier: MIT
// Draws a wall, a fence or a hedge along a line.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class BarrierTool : public PathTool {
 public:
  explicit BarrierTool(Canvas& canvas) : PathTool(canvas, Kind::Line) {}

  [[nodiscard]] QStringList ways() const override;
  [[nodiscard]] int way() const override { return int(kind_); }
  void setWay(int way) override { kind_ = BarrierKind(way); }

 protected:
  [[nodiscard]] QString what() const override;
  [[nodiscard]] ChangeSet edit(const std::vector<Point>& corners) override;

 private:
  BarrierKind kind_ = BarrierKind::Wall;
};

}  // namespace tussock
