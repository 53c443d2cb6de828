// SPDX-License-Identifier: MIT
// Draws the lot line. A yard has one: drawing it again takes its place.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class LotLineTool : public PathTool {
 public:
  explicit LotLineTool(Canvas& canvas) : PathTool(canvas, Kind::Outline) {}

 protected:
  [[nodiscard]] QString what() const override { return QObject::tr("the lot line"); }
  [[nodiscard]] ChangeSet edit(const std::vector<Point>& corners) override;
};

}  // namespace tussock
