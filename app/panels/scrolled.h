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

}  // namespace tussock
