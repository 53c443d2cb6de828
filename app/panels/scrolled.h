// SPDX-License-Identifier: MIT
// A part of a panel that scrolls up and down where it has no room.
#pragma once

#include <QScrollArea>

namespace tussock {

[[nodiscard]] inline QScrollArea* scrolled(QWidget* content, const QString& name) {
  auto* area = new QScrollArea;
  area->setObjectName(name);
  area->setWidget(content);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  return area;
}

// Scrolls to a part that has just come, once it is laid out.
inline void bringIntoView(QWidget* part) {
  QMetaObject::invokeMethod(
      part,
      [part] {
        QWidget* around = part->parentWidget();
        while (around && !qobject_cast<QScrollArea*>(around)) around = around->parentWidget();
        if (around) qobject_cast<QScrollArea*>(around)->ensureWidgetVisible(part);
      },
      Qt::QueuedConnection);
}

}  // namespace tussock
