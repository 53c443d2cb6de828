// SPDX-License-Identifier: MIT
// Measures along a line. It leaves nothing in the yard.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class MeasureTool : public PathTool {
 public:
  explicit MeasureTool(Canvas& canvas) : PathTool(canvas, Kind::Line) {}
  [[nodiscard]] QString hint() const override;
  [[nodiscard]] bool onlyLooks() const override { return true; }
  [[nodiscard]] Length total() const;

 protected:
  [[nodiscard]] QString what() const override { return QObject::tr("what you measure"); }
  [[nodiscard]] ChangeSet edit(const std::vector<Point>&) override { return {}; }
};

}  // namespace tussock
