// SPDX-License-Identifier: MIT
#include "app/tools/stretch_gesture.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/tools/drift_count.h"
#include "core/geometry/overlay.h"

namespace tussock {

namespace {
constexpr double kStep = std::numbers::pi / 12.0;  // with Shift: steps of 15 degrees
}

StretchGesture::StretchGesture(Canvas& canvas, Id<Drift> drift, double side)
    : canvas_(canvas), drift_(drift), side_(side) {
  const Drift* found = canvas.document().yard().drifts.find(drift);
  if (!found) return;
  middle_ = middleOf(*found);
  const OrientedRectangle box = smallestRectangle(positionsOf(*found), found->spacing / 2.0);
  box_ = std::max(box.length * box.width, 1e-6);
}

// The end goes with the pointer, the rectangle around the drift keeps its area.
DriftShape StretchGesture::shapeAt(const PointerAt& at) const {
  const Drift* drift = canvas_.document().yard().drifts.find(drift_);
  if (!drift) return {};
  DriftShape shape = shapeOf(*drift);
  const Point end = (at.site - middle_) * side_;
  const double length = 2.0 * std::hypot(end.x, end.y);
  double turn = std::atan2(end.y, end.x);
  if (at.modifiers & Qt::ShiftModifier) turn = std::round(turn / kStep) * kStep;
  shape.axis = Angle::radians(turn);
  shape.stretch = std::clamp(length * length / box_, 1.0, 10.0);
  return shape;
}

void StretchGesture::move(const PointerAt& at) {
  dragged_ = true;
  at_ = at.site;
  breakage_ = {};
  Document& document = canvas_.document();
  IdSource ids = document.ids();  // a copy: they are taken for good on release
  const DriftEdit edit = reshapeDrift(document.yard(), drift_, shapeAt(at), ids);
  const Drift* drift = driftIn(edit.edit, drift_);
  if (!drift) {  // it stays as it is
    canvas_.clearPreview();
    return canvas_.showFigure(at.site, QStringLiteral("0"), fitNote(edit.asked, 0));
  }
  canvas_.show(edit.edit);
  showCount(canvas_, *drift, fitNote(edit.asked, edit.fitted));
  breakage_ = breakageOf(document, *drift);
}

void StretchGesture::paint(QPainter& painter, const SceneMapping&) const {
  breakage_.paint(painter, canvas_, at_);
}

void StretchGesture::finish(const PointerAt& at) {
  canvas_.clearPreview();
  canvas_.clearFigure();
  if (!dragged_) return;
  Document& document = canvas_.document();
  const DriftEdit edit = reshapeDrift(document.yard(), drift_, shapeAt(at), document.ids());
  if (!edit.edit.empty()) document.commit(edit.edit);
}

}  // namespace tussock
