// SPDX-License-Identifier: MIT
#include "app/tools/hole_tool.h"

#include "app/tools/outline.h"
#include "core/edit/draft.h"
#include "core/planting/grow.h"

namespace tussock {

std::optional<Bed> HoleTool::cut(const std::vector<Point>& corners) const {
  const Bed* under = corners.empty() ? nullptr : bedAt(document().yard(), corners.front());
  if (!under) return std::nullopt;
  Bed bed = *under;
  bed.outline.holes.push_back(corners);
  bed.outline = normalised(bed.outline);
  return bed;
}

QString HoleTool::trouble(const std::vector<Point>& corners) const {
  const QString problem = PathTool::trouble(corners);
  if (!problem.isEmpty()) return problem;
  const std::optional<Bed> bed = cut(corners);
  if (!bed) return QObject::tr("The hole starts outside every bed. Begin inside the bed to cut.");
  const auto reason = invalidityOf(bed->outline);
  if (!reason) return {};
  return QString::fromStdString(refusalOf(*reason));
}

ChangeSet HoleTool::edit(const std::vector<Point>& corners) {
  const std::optional<Bed> bed = cut(corners);
  if (!bed) return {};
  Draft draft(document().yard());
  draft.put(*bed);
  return draft.finish(QObject::tr("Cut hole in bed").toStdString());
}

}  // namespace tussock
