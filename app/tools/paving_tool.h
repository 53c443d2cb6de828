// SPDX-License-Identifier: MIT
// Draws paving: walks, terraces, drives.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class PavingTool : public PathTool {
 public:
  explicit PavingTool(Canvas& canvas) : PathTool(canvas, Kind::Outline) {}

 protected:
  [[nodiscard]] QString what() const override { return QObject::tr("the paving"); }
  [[nodiscard]] ChangeSet edit(const std::vector<Point>& corners) override;
};

}  // namespace tussock
