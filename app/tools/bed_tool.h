// SPDX-License-Identifier: MIT
// Draws a bed.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class BedTool : public PathTool {
 public:
  explicit BedTool(Canvas& canvas) : PathTool(canvas, Kind::Outline) {}

 protected:
  [[nodiscard]] QString what() const override { return QObject::tr("the bed"); }
  [[nodiscard]] ChangeSet edit(const std::vector<Point>& corners) override;
};

}  // namespace tussock
