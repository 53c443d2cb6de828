// SPDX-License-Identifier: MIT
#include "app/tools/key_nudge.h"

#include <optional>
#include <utility>

#include "app/tools/move_edit.h"

namespace tussock {

namespace {

constexpr int kOneEditMilliseconds = 1000;
constexpr double kFineInMetres = 0.02;

std::optional<Point> directionOf(int key) {
  switch (key) {
    case Qt::Key_Left:
      return Point{-1.0, 0.0};
    case Qt::Key_Right:
      return Point{1.0, 0.0};
    case Qt::Key_Up:
      return Point{0.0, 1.0};
    case Qt::Key_Down:
      return Point{0.0, -1.0};
    default:
      return std::nullopt;
  }
}

}  // namespace

KeyNudge::KeyNudge(Canvas& canvas, QObject* parent) : QObject(parent), canvas_(canvas) {
  timer_.setSingleShot(true);
  timer_.setInterval(kOneEditMilliseconds);
  connect(&timer_, &QTimer::timeout, this, &KeyNudge::finish);
}

bool KeyNudge::key(const QKeyEvent& event) {
  const auto direction = directionOf(event.key());
  if (!direction || canvas_.document().selection().empty()) return false;
  if (!pending()) {
    refs_ = canvas_.document().selection();
    step_ = {};
  }
  const bool feet = canvas_.document().yard().settings.units == UnitSystem::FeetInches;
  const double fine = feet ? kMetresPerInch : kFineInMetres;
  const double coarse = feet ? kMetresPerFoot : 10.0 * kFineInMetres;
  step_ += *direction * (event.modifiers() & Qt::ShiftModifier ? coarse : fine);
  canvas_.showMoved(movedBy(canvas_.document().yard(), refs_), step_);
  timer_.start();
  return true;
}

void KeyNudge::finish() {
  if (refs_.empty()) return;
  timer_.stop();
  canvas_.clearPreview();
  const std::vector<ObjectRef> refs = std::exchange(refs_, {});
  if (movedBy(canvas_.document().yard(), refs).empty())
    return canvas_.tell(QObject::tr("What is selected is locked. Unlock it to move it."));
  canvas_.document().commit(moveEdit(canvas_.document().yard(), refs, step_));
}

void KeyNudge::cancel() {
  if (refs_.empty()) return;
  timer_.stop();
  refs_.clear();
  canvas_.clearPreview();
}

}  // namespace tussock
