// SPDX-License-Identifier: MIT
#include "app/tools/turn_gesture.h"

#include <cmath>
#include <numbers>

#include "app/tools/drift_count.h"
#include "core/planting/edit_drift.h"

namespace tussock {

namespace {
constexpr double kAngleStep = std::numbers::pi / 12.0;  // with Shift: steps of 15 degrees

double angleOf(Point vector) {
  return std::atan2(vector.y, vector.x);
}
}  // namespace

TurnGesture::TurnGesture(Canvas& canvas, Id<Drift> drift, const PointerAt& from)
    : canvas_(canvas), drift_(drift), from_(from.site) {
  if (const Drift* found = canvas.document().yard().drifts.find(drift)) middle_ = middleOf(*found);
}

ChangeSet TurnGesture::edit(const PointerAt& at) const {
  double turn = angleOf(at.site - middle_) - angleOf(from_ - middle_);
  if (at.modifiers & Qt::ShiftModifier) turn = std::round(turn / kAngleStep) * kAngleStep;
  return turnDrift(canvas_.document().yard(), drift_, Angle::radians(turn)).edit;
}

void TurnGesture::move(const PointerAt& at) {
  at_ = at.site;
  breakage_ = {};
  const ChangeSet turned = edit(at);
  canvas_.show(turned);
  const Drift* drift = driftIn(turned, drift_);
  if (!drift) return;
  showCount(canvas_, *drift);
  breakage_ = breakageOf(canvas_.document(), *drift);
}

void TurnGesture::paint(QPainter& painter, const SceneMapping&) const {
  breakage_.paint(painter, canvas_, at_);
}

void TurnGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  canvas_.clearFigure();
  if (at.site != from_) canvas_.document().commit(edit(at));
}

}  // namespace tussock
