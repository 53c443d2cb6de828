// SPDX-License-Identifier: MIT
// Draws the footprint of a building; its roof and heights are set beside the drawing.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class BuildingTool : public PathTool {
 public:
  explicit BuildingTool(Canvas& canvas) : PathTool(canvas, Kind::Outline) {}

 protected:
  [[nodiscard]] QString what() const override { return QObject::tr("the building"); }
  [[nodiscard]] ChangeSet edit(const std::vector<Point>& corners) override;
};

}  // namespace tussock
