// SPDX-License-Identifier: MIT
#include "app/window/pages_scroll.h"

#include <QEvent>

namespace tussock {

PagesScroll::PagesScroll(QWidget* pages, QWidget* parent) : QScrollArea(parent) {
  setObjectName(QStringLiteral("pages-scroll"));
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  setWidget(pages);
  pages->installEventFilter(this);
}

// Not left to setWidgetResizable, which scrolls as soon as there is not all the room one could
// wish.
void PagesScroll::fit() {
  widget()->resize(maximumViewportSize().expandedTo(widget()->minimumSizeHint()));
}

void PagesScroll::resizeEvent(QResizeEvent* event) {
  fit();
  QScrollArea::resizeEvent(event);
}

bool PagesScroll::eventFilter(QObject* watched, QEvent* event) {
  if (watched == widget() && event->type() == QEvent::LayoutRequest) fit();
  return QScrollArea::eventFilter(watched, event);
}

}  // namespace tussock
