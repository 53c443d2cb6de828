// SPDX-License-Identifier: MIT
// What the pointer and the keys do on the canvas: the tool in hand first, looking around otherwise.
#include <algorithm>
#include <cmath>
#include <QDragEnterEvent>
#include <QGestureEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QWheelEvent>
#include <utility>

#include "app/canvas/canvas.h"

namespace tussock {

namespace {

constexpr double kWheelNotch = 120.0;
constexpr double kWheelZoom = 1.18;    // a notch
constexpr double kKeyPan = 60.0;       // pixels
constexpr double kCompassApart = 6.0;  // pixels from the top and right edges to its plate
constexpr double kRoomy = 460.0;       // pixels: on a lower canvas the sky is drawn smaller

QStringList picturesIn(const QMimeData& data) {
  QStringList paths;
  for (const QUrl& url : data.urls()) {
    const QString path = url.toLocalFile();
    for (const char* ending : {".png", ".jpg", ".jpeg"})
      if (path.endsWith(QLatin1String(ending), Qt::CaseInsensitive)) paths.append(path);
  }
  return paths;
}

}  // namespace

QList<GestureWords> Canvas::gestures() {
  return {
      {tr("Wheel, pinch"), tr("Zoom at the pointer")},
      {tr("Middle button, Space and drag"), tr("Look around")},
      {tr("Arrow keys"), tr("Look around, while nothing is selected")},
      {tr("+ and −"), tr("Zoom, while no drift is selected")},
      {tr("Escape"), tr("Takes up Select, when there is nothing else to leave")},
      {tr("Drag the sun"), tr("While shadows are shown, goes through the day along its path")},
      {tr("Drop a picture"), tr("Lays a PNG or JPEG under the plan, to trace")},
  };
}

PointerAt Canvas::pointerAt(const QSinglePointEvent& event) const {
  return {mapping_.toSite(event.position()), event.position(), event.modifiers()};
}

void Canvas::afterToolEvent() {
  if (!tool_) return;
  setCursor(tool_->cursor());
  emit hintChanged(tool_->hint());
  update();
}

QPointF Canvas::compassMiddle() const {
  const double away = compassRadius() + kCompassPlate + kCompassApart;
  return {width() - away, away};
}

double Canvas::compassRadius() const {
  return height() - foot_ < kRoomy ? kSmallCompass : kCompassRadius;
}

bool Canvas::overSun(QPointF at) const {
  return sunView_.choice().look == SunLook::Shadows && holdsSun(compass_, compassMiddle(), at);
}

void Canvas::carrySun(QPointF at) {
  const auto minute = minuteNear(compass_, compassMiddle(), at);
  if (!minute) return;
  SunChoice choice = sunView_.choice();
  choice.minute = std::clamp(*minute, 0, kMinutesInDay - 1);
  sunView_.choose(choice);
}

void Canvas::mousePressEvent(QMouseEvent* event) {
  const bool pan = event->button() == Qt::MiddleButton || spaceHeld_;
  if (pan) {
    panFrom_ = event->position();
    setCursor(Qt::ClosedHandCursor);
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  if (overSun(event->position())) {
    sunHeld_ = true;
    return carrySun(event->position());
  }
  const bool marks = !tool_ || tool_->readsMarks();
  if (const FindingMark* mark = marks ? marks_.at(event->position(), mapping_) : nullptr) {
    emit findingMarkClicked(mark->key);
    return;
  }
  if (tool_) tool_->press(pointerAt(*event));
  afterToolEvent();
}

void Canvas::mouseMoveEvent(QMouseEvent* event) {
  pointer_ = event->position();
  if (panFrom_) {
    panBy(event->position() - *panFrom_);
    panFrom_ = event->position();
    return;
  }
  if (sunHeld_) return carrySun(event->position());
  emit pointerMoved(mapping_.toSite(event->position()));
  if (tool_) tool_->move(pointerAt(*event));
  afterToolEvent();
  if (event->buttons() == Qt::NoButton && overSun(event->position()))
    setCursor(Qt::PointingHandCursor);
}

void Canvas::mouseReleaseEvent(QMouseEvent* event) {
  if (panFrom_) {
    panFrom_.reset();
    setCursor(spaceHeld_ ? Qt::OpenHandCursor : Qt::ArrowCursor);
  } else if (std::exchange(sunHeld_, false)) {
    return;
  } else if (event->button() == Qt::LeftButton && tool_) {
    tool_->release(pointerAt(*event));
  }
  afterToolEvent();
}

void Canvas::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && tool_) tool_->doubleClick(pointerAt(*event));
  afterToolEvent();
}

void Canvas::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / kWheelNotch;
  if (event->modifiers() & Qt::ControlModifier) {
    if (notches != 0.0) emit countStepped(notches > 0.0 ? 1 : -1);
  } else {
    zoomAt(event->position(), std::pow(kWheelZoom, notches));
  }
  event->accept();
}

void Canvas::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    spaceHeld_ = true;
    setCursor(Qt::OpenHandCursor);
    return;
  }
  if (event->key() == Qt::Key_Escape) emit cancelled();
  const bool taken = (tool_ && tool_->key(*event)) || panWithKey(*event);
  if (!taken && event->key() == Qt::Key_Escape)
    emit escaped();
  else if (!taken)
    QWidget::keyPressEvent(event);
  afterToolEvent();
}

bool Canvas::panWithKey(const QKeyEvent& event) {
  switch (event.key()) {
    case Qt::Key_Left:
      return panBy({kKeyPan, 0.0}), true;
    case Qt::Key_Right:
      return panBy({-kKeyPan, 0.0}), true;
    case Qt::Key_Up:
      return panBy({0.0, kKeyPan}), true;
    case Qt::Key_Down:
      return panBy({0.0, -kKeyPan}), true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoomIn(), true;
    case Qt::Key_Minus:
      return zoomOut(), true;
    default:
      return false;
  }
}

void Canvas::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Space || event->isAutoRepeat())
    return QWidget::keyReleaseEvent(event);
  spaceHeld_ = false;
  setCursor(tool_ ? tool_->cursor() : QCursor(Qt::ArrowCursor));
}

void Canvas::leaveEvent(QEvent*) {
  pointer_.reset();
  emit pointerLeft();
}

void Canvas::dragEnterEvent(QDragEnterEvent* event) {
  if (document_.isOpen() && !picturesIn(*event->mimeData()).isEmpty())
    event->acceptProposedAction();
}

void Canvas::dropEvent(QDropEvent* event) {
  emit picturesDropped(picturesIn(*event->mimeData()), mapping_.toSite(event->position()));
}

bool Canvas::event(QEvent* event) {
  if (event->type() == QEvent::NativeGesture) {
    const auto* gesture = static_cast<QNativeGestureEvent*>(event);
    if (gesture->gestureType() == Qt::ZoomNativeGesture)
      return zoomAt(gesture->position(), 1.0 + gesture->value()), true;
  }
  if (event->type() == QEvent::Gesture) {
    auto* gestures = static_cast<QGestureEvent*>(event);
    if (auto* pinch = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture))) {
      const QPointF at = mapFromGlobal(pinch->hotSpot());
      return zoomAt(at, pinch->scaleFactor()), true;
    }
  }
  return QWidget::event(event);
}

}  // namespace tussock
