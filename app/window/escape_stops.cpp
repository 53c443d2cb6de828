// SPDX-License-Identifier: MIT
#include "app/window/escape_stops.h"

#include <QKeyEvent>

#include "app/canvas/canvas.h"
#include "app/document/filling.h"

namespace tussock {

EscapeStops::EscapeStops(Canvas& canvas, Filling& filling, QObject& window)
    : QObject(&window), canvas_(canvas), filling_(filling) {
  canvas.installEventFilter(this);
  window.installEventFilter(this);
}

bool EscapeStops::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress || !filling_.running() ||
      static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape)
    return QObject::eventFilter(watched, event);
  if (watched == &canvas_ && canvas_.tool() && canvas_.tool()->busy())
    return QObject::eventFilter(watched, event);
  filling_.stop();
  return true;
}

}  // namespace tussock
