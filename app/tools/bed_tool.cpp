// SPDX-License-Identifier: MIT
#include "app/tools/bed_tool.h"

#include "core/edit/draft.h"

namespace tussock {

ChangeSet BedTool::edit(const std::vector<Point>& corners) {
  Bed bed;
  bed.id = document().ids().take<Bed>();
  bed.name = freshName(document().yard().beds, QObject::tr("Bed"));
  bed.outline = normalised({corners, {}});
  Draft draft(document().yard());
  draft.put(std::move(bed));
  return draft.finish(QObject::tr("Draw bed").toStdString());
}

}  // namespace tussock
