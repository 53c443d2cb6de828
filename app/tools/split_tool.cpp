// SPDX-License-Identifier: MIT
#include "app/tools/split_tool.h"

#include <algorithm>

#include "app/tools/drift_count.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {

// Plants on the smaller side of the line, if the line meets the drift at all.
std::size_t partedBy(const Drift& drift, Point from, Point to) {
  Box line;
  line.include(from), line.include(to);
  if (!line.overlaps(boundsOf(positionsOf(drift)).grown(drift.spacing.metres()))) return 0;
  const auto outline = outlineOf(drift);
  const bool meets = std::any_of(outline.begin(), outline.end(), [&](const Polygon& piece) {
    return crosses({from, to}, piece) || contains(piece, from);
  });
  if (!meets) return 0;
  const auto left =
      std::size_t(std::count_if(drift.plants.begin(), drift.plants.end(), [&](const Plant& p) {
        return cross(to - from, p.at - from) > 0.0;
      }));
  return std::min(left, drift.plants.size() - left);
}

QString plants(int count) {
  return count == 1 ? QObject::tr("One plant") : QObject::tr("%1 plants").arg(count);
}

}  // namespace

QString divisionNote(const Division& division) {
  if (division.added > 0)
    return QObject::tr("%1 added, so that the counts are odd.").arg(plants(division.added));
  if (division.removed > 0)
    return QObject::tr("%1 given up, so that the counts are odd: there was no room for one more.")
        .arg(plants(division.removed));
  return {};
}

QString SplitTool::hint() const {
  return QObject::tr("Drag a line across a drift: it parts there into two odd drifts");
}

QList<GestureWords> SplitTool::gestures() const {
  return {
      {QObject::tr("Drag across a drift"), QObject::tr("Parts it there into two odd drifts")},
      {QObject::tr("Escape"), QObject::tr("Leaves it whole")},
  };
}

void SplitTool::press(const PointerAt& at) {
  from_ = to_ = at.site;
}

void SplitTool::move(const PointerAt& at) {
  to_ = at.site;
  if (from_) showParts();
}

// What the line would make of the drift: both parts, and their counts.
void SplitTool::showParts() {
  canvas_.clearPreview();
  canvas_.clearFigure();
  const auto drift = crossed(*from_, to_);
  if (!drift) return;
  IdSource ids = canvas_.document().ids();  // a copy: they are taken for good on release
  const Division division = splitDrift(canvas_.document().yard(), *drift, *from_, to_, ids);
  const Drift* first = driftIn(division.edit, division.first);
  const Drift* second = driftIn(division.edit, division.second);
  if (!first || !second) return;
  canvas_.show(division.edit);
  Box box = boundsOf(positionsOf(*first));
  box.include(boundsOf(positionsOf(*second)));
  canvas_.showFigure(
      {box.centre().x, box.high.y + first->spacing.metres()},
      QObject::tr("%1 + %2").arg(first->plants.size()).arg(second->plants.size()),
      notesTogether(divisionNote(division),
                    groundsNote(*first, *second, canvas_.document().yard().settings.units)));
}

void SplitTool::cancel() {
  from_.reset();
  canvas_.clearPreview();
  canvas_.clearFigure();
}

std::optional<Id<Drift>> SplitTool::crossed(Point from, Point to) const {
  const auto& selection = canvas_.document().selection();
  if (selection.size() == 1)
    if (const auto drift = idIf<Drift>(selection.front())) return drift;
  std::optional<Id<Drift>> found;
  std::size_t most = 0;
  for (const Drift& drift : canvas_.document().yard().drifts)
    if (const std::size_t parted = partedBy(drift, from, to); parted > most)
      most = parted, found = drift.id;
  return found;
}

void SplitTool::release(const PointerAt& at) {
  if (!from_) return;
  const Point from = *from_;
  cancel();
  if (distance(from, at.site) < canvas_.mapping().metres(4.0)) return;
  const auto drift = crossed(from, at.site);
  if (!drift) return canvas_.tell(QObject::tr("The line crosses no drift. Drag it across one."));
  Document& document = canvas_.document();
  const Division division = splitDrift(document.yard(), *drift, from, at.site, document.ids());
  const std::string_view why = explain(division.refusal);
  if (!why.empty()) return canvas_.tell(QString::fromUtf8(why.data(), qsizetype(why.size())));
  if (!document.commit(division.edit)) return;
  document.select({refTo(division.first), refTo(division.second)});
  if (const QString note = divisionNote(division); !note.isEmpty()) canvas_.tell(note);
}

bool SplitTool::key(const QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape || !busy()) return false;
  cancel();
  return true;
}

void SplitTool::paint(QPainter& painter, const SceneMapping& mapping) const {
  if (!from_) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(canvas_.look().theme.sky, 2.0, Qt::DashLine));
  painter.drawLine(mapping.toPixels(*from_), mapping.toPixels(to_));
}

}  // namespace tussock
