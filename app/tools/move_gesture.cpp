// SPDX-License-Identifier: MIT
#include "app/tools/move_gesture.h"

#include "app/tools/drift_count.h"
#include "app/tools/move_edit.h"
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
  const Point step = at.site - from_.site;
  canvas_.showMoved(moved_, step);
  canvas_.tellLength(QString::fromStdString(formatLength(
      Length::metres(std::hypot(step.x, step.y)), canvas_.document().yard().settings.units)));
  if (moved_.size() == 1) showDrift(step);
}

// One drift that moves tells its count, ground and spacing.
void MoveGesture::showDrift(Point step) {
  const auto id = idIf<Drift>(moved_.front());
  const Drift* found = id ? canvas_.document().yard().drifts.find(*id) : nullptr;
  if (!found) return;
  Drift drift = *found;
  for (Plant& plant : drift.plants) plant.at += step;
  showCount(canvas_, drift);
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
