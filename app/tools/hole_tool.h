// SPDX-License-Identifier: MIT
// Cuts a hole into the bed it is drawn in: around a trunk, a meter, a basement window.
#pragma once

#include "app/tools/path_tool.h"

namespace tussock {

class HoleTool : public PathTool {
 public:
  explicit HoleTool(Canvas& canvas) : PathTool(canvas, Kind::Outline) {}

 protected:
  [[nodiscard]] QString what() const override { return QObject::tr("the hole, inside a bed"); }
  [[nodiscard]] ChangeSet edit(const std::vector<Point>& corners) override;
  [[nodiscard]] QString trouble(const std::vector<Point>& corners) const override;

 private:
  [[nodiscard]] std::optional<Bed> cut(const std::vector<Point>& corners) const;
};

}  // namespace tussock
