// SPDX-License-Identifier: MIT
#include "app/window/pages_scroll.h"

#include <QEvent>

namespace tussock {

namespace {
constexpr QSize kAtEase{960, 560};  // chips in two rows, cards and a canvas above them in full
}

PagesScroll::PagesScroll(QWidget* pages, QWidget* parent) : QScrollArea(parent) {
  setObjectName(QStringLiteral("pages-scroll"));
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  setWidget(pages);
  pages->installEventFilter(this);
}

// Not left to setWidgetResizable, which scrolls as soon as there is not all the room one could
// wish.
// What must scroll anyway is given room to work in.
void PagesScroll::fit() {
  const QSize room = maximumViewportSize(), least = widget()->minimumSizeHint();
  const bool fits = room.expandedTo(least) == room;
  widget()->resize(fits ? room : room.expandedTo(least).expandedTo(kAtEase));
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
