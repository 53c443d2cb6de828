// SPDX-License-Identifier: MIT
#include "app/tools/lot_line_tool.h"

#include "core/edit/draft.h"

namespace tussock {

ChangeSet LotLineTool::edit(const std::vector<Point>& corners) {
  const Yard& yard = document().yard();
  LotLine lot;
  if (!yard.lotLines.empty())
    lot = *yard.lotLines.begin();
  else
    lot.id = document().ids().take<LotLine>();
  lot.outline = normalised({corners, {}});
  Draft draft(yard);
  draft.put(std::move(lot));
  return draft.finish(QObject::tr("Draw lot line").toStdString());
}

}  // namespace tussock
