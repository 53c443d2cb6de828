// SPDX-License-Identifier: MIT
#include "app/tools/move_gesture.h"

#include "app/tools/drift_count.h"
#include "app/tools/move_edit.h"
#include "core/planting/edit_drift.h"
#include "core/units/measure_text.h"

namespace tussock {

MoveGesture::MoveGesture(Canvas& canvas, const PointerAt& from)
    : canvas_(canvas),
      from_(from),
      refs_(canvas.document().selection()),
      moved_(movedBy(canvas.document().yard(), refs_)) {}

void MoveGesture::move(const PointerAt& at) {
  const QPointF away = at.pixels - from_.pixels;
  if (!dragged_ && away.manhattanLength() < kDragPixels) return;
  dragged_ = true;
  at_ = at.site;
  const Point step = at.site - from_.site;
  canvas_.showMoved(moved_, step);
  canvas_.tellLength(QString::fromStdString(formatLength(
      Length::metres(std::hypot(step.x, step.y)), canvas_.document().yard().settings.units)));
  if (moved_.size() == 1) showDrift(step);
}

// One drift that moves tells its count, ground and spacing, and what it breaks there.
void MoveGesture::showDrift(Point step) {
  const Document& document = canvas_.document();
  const auto id = idIf<Drift>(moved_.front());
  if (!id) return;
  const ChangeSet edit = moveDrift(document.yard(), *id, step).edit;
  const Drift* drift = driftIn(edit, *id);
  breakage_ = {};
  if (!drift) return;  // it is where it was
  showCount(canvas_, *drift);
  breakage_ = breakageOf(document, *drift);
}

void MoveGesture::paint(QPainter& painter, const SceneMapping&) const {
  if (dragged_) breakage_.paint(painter, canvas_, at_);
}

void MoveGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  canvas_.clearFigure();
  canvas_.tellLength({});
  if (!dragged_) return;
  if (moved_.empty())
    return canvas_.tell(QObject::tr("What is selected is locked. Unlock it to move it."));
  canvas_.document().commit(moveEdit(canvas_.document().yard(), refs_, at.site - from_.site));
}

}  // namespace tussock
