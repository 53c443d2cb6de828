// SPDX-License-Identifier: MIT
#include "app/tools/paving_tool.h"

#include "core/edit/draft.h"

namespace tussock {

ChangeSet PavingTool::edit(const std::vector<Point>& corners) {
  Paving paving;
  paving.id = document().ids().take<Paving>();
  paving.name = freshName(document().yard().pavings, QObject::tr("Paving"));
  paving.outline = normalised({corners, {}});
  Draft draft(document().yard());
  draft.put(std::move(paving));
  return draft.finish(QObject::tr("Draw paving").toStdString());
}

}  // namespace tussock
