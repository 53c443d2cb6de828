// SPDX-License-Identifier: MIT
#include "app/tools/building_tool.h"

#include "core/edit/draft.h"

namespace tussock {

ChangeSet BuildingTool::edit(const std::vector<Point>& corners) {
  Building building;
  building.id = document().ids().take<Building>();
  building.name = freshName(document().yard().buildings, QObject::tr("Building"));
  building.footprint = normalised({corners, {}});
  Draft draft(document().yard());
  draft.put(std::move(building));
  return draft.finish(QObject::tr("Draw building").toStdString());
}

}  // namespace tussock
