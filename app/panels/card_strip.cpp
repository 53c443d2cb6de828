// SPDX-License-Identifier: MIT
#include "app/panels/card_strip.h"

#include <algorithm>
#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>

#include "app/look/theme.h"
#include "app/panels/card_paint.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr int kCardStep = kCardWidth + kSpace2;

}  // namespace

CardStrip::CardStrip(QWidget* parent) : QAbstractScrollArea(parent) {
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  viewport()->setMouseTracking(true);
  viewport()->setAutoFillBackground(false);
  setAccessibleName(tr("Species"));
}

void CardStrip::show(std::vector<const Species*> species, QStringList notes) {
  if (species == species_ && notes == notes_) return;
  const Species* was = current();
  notes_ = std::move(notes);
  species_ = std::move(species);
  const auto at = std::find(species_.begin(), species_.end(), was);
  current_ = at == species_.end() ? (species_.empty() ? -1 : 0) : int(at - species_.begin());
  hovered_ = -1;
  updateScrollBar();
  if (current() != was) {
    horizontalScrollBar()->setValue(0);
    emit currentChanged();
  }
  viewport()->update();
}

void CardStrip::setUnits(UnitSystem units) {
  units_ = units;
  viewport()->update();
}

void CardStrip::setEmptyText(const QString& text) {
  emptyText_ = text;
  viewport()->update();
}

const Species* CardStrip::current() const {
  return current_ < 0 ? nullptr : species_[std::size_t(current_)];
}

void CardStrip::setCurrent(int index) {
  if (species_.empty()) return;
  current_ = std::clamp(index, 0, int(species_.size()) - 1);
  reveal(current_);
  setAccessibleDescription(wordsOf(*current()));
  emit currentChanged();
  viewport()->update();
}

QRect CardStrip::cardRect(int index) const {
  return {kSpace4 + index * kCardStep - horizontalScrollBar()->value(), 2, kCardWidth, kCardHeight};
}

int CardStrip::cardAt(const QPoint& point) const {
  const int x = point.x() + horizontalScrollBar()->value() - kSpace4;
  const int index = x < 0 ? -1 : x / kCardStep;
  const bool onCard = index >= 0 && index < int(species_.size()) && cardRect(index).contains(point);
  return onCard ? index : -1;
}

QSize CardStrip::sizeHint() const {
  return {6 * kCardStep, kCardHeight + 4 + horizontalScrollBar()->sizeHint().height()};
}

QSize CardStrip::minimumSizeHint() const {
  return {kCardStep, sizeHint().height()};
}

void CardStrip::paintEvent(QPaintEvent*) {
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  if (species_.empty()) {
    painter.setPen(currentTheme().quietInk);
    painter.setFont(fontFor(TextRole::Body));
    painter.drawText(viewport()->rect().adjusted(kSpace4, 0, -kSpace4, 0),
                     Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, emptyText_);
    return;
  }
  const int first = std::max(0, (horizontalScrollBar()->value() - kSpace4) / kCardStep);
  const int end = std::min(int(species_.size()), first + viewport()->width() / kCardStep + 2);
  for (int i = first; i < end; ++i) {
    const CardState state{i == hovered_, i == current_ && hasFocus(), i == current_ && carrying_,
                          notes_.value(i)};
    paintCard(painter, cardRect(i), *species_[std::size_t(i)], units_, state);
  }
}

void CardStrip::resizeEvent(QResizeEvent*) {
  updateScrollBar();
}

void CardStrip::scrollContentsBy(int, int) {
  viewport()->update();
}

void CardStrip::updateScrollBar() {
  const int whole = int(species_.size()) * kCardStep + 2 * kSpace4 - kSpace2;
  horizontalScrollBar()->setPageStep(viewport()->width());
  horizontalScrollBar()->setSingleStep(kCardStep / 2);
  horizontalScrollBar()->setRange(0, std::max(0, whole - viewport()->width()));
}

void CardStrip::reveal(int index) {
  const QRect card = cardRect(index);
  QScrollBar* bar = horizontalScrollBar();
  if (card.left() < kSpace4) bar->setValue(bar->value() + card.left() - kSpace4);
  const int over = card.right() + kSpace4 - viewport()->width();
  if (over > 0) bar->setValue(bar->value() + over);
}

void CardStrip::wheelEvent(QWheelEvent* event) {
  const QPoint turn = event->pixelDelta().isNull() ? event->angleDelta() : event->pixelDelta();
  const int step = std::abs(turn.x()) > std::abs(turn.y()) ? turn.x() : turn.y();
  horizontalScrollBar()->setValue(horizontalScrollBar()->value() - step);
  event->accept();
}

void CardStrip::mousePressEvent(QMouseEvent* event) {
  const int index = cardAt(event->pos());
  if (event->button() != Qt::LeftButton || index < 0) return;
  setCurrent(index);
  pressed_ = true;
  pressedAt_ = event->pos();
}

void CardStrip::mouseMoveEvent(QMouseEvent* event) {
  if (carrying_ && pressed_) {
    emit carried(event->globalPosition().toPoint(), event->modifiers());
    return;
  }
  if (!pressed_) {
    setHovered(cardAt(event->pos()));
    return;
  }
  if ((event->pos() - pressedAt_).manhattanLength() < QApplication::startDragDistance()) return;
  lift();
  emit carried(event->globalPosition().toPoint(), event->modifiers());
}

void CardStrip::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !pressed_) return;
  pressed_ = false;
  if (!carrying_) return;
  letGo();
  if (viewport()->rect().contains(event->pos())) {
    emit putBack();
  } else {
    emit dropped(event->globalPosition().toPoint());
  }
}

void CardStrip::mouseDoubleClickEvent(QMouseEvent* event) {
  const int index = cardAt(event->pos());
  if (event->button() == Qt::LeftButton && index >= 0)
    emit factsWanted(text(species_[std::size_t(index)]->botanicalName));
}

void CardStrip::lift() {
  carrying_ = true;
  setHovered(-1);
  viewport()->setCursor(Qt::ClosedHandCursor);
  viewport()->update();
  emit lifted(text(current()->botanicalName));
}

void CardStrip::letGo() {
  carrying_ = false;
  viewport()->unsetCursor();
  viewport()->update();
}

void CardStrip::leaveEvent(QEvent*) {
  setHovered(-1);
}

void CardStrip::setHovered(int index) {
  if (index == hovered_) return;
  hovered_ = index;
  viewport()->setCursor(index < 0 ? Qt::ArrowCursor : Qt::OpenHandCursor);
  viewport()->update();
}

bool CardStrip::event(QEvent* event) {
  // While a species is in hand, Escape, + and − are for it and not for shortcuts of the window.
  if (event->type() == QEvent::ShortcutOverride && carrying_) event->accept();
  return QAbstractScrollArea::event(event);
}

QString CardStrip::wordsOf(const Species& species) const {
  const QString more = more_ ? more_(species) : QString();
  const QString words = cardWords(species, units_);
  return more.isEmpty() ? words : words + QStringLiteral("\n\n") + more;
}

bool CardStrip::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const int index = cardAt(help->pos());
    if (index < 0) {
      QToolTip::hideText();
    } else {
      QToolTip::showText(help->globalPos(), plainTip(wordsOf(*species_[std::size_t(index)])),
                         viewport(), cardRect(index));
    }
    return true;
  }
  if (event->type() == QEvent::Leave) leaveEvent(event);
  return QAbstractScrollArea::viewportEvent(event);
}

bool CardStrip::keyWhileCarrying(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Escape:
      pressed_ = false;
      letGo();
      emit putBack();
      return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      emit countStepped(1);
      return true;
    case Qt::Key_Minus:
      emit countStepped(-1);
      return true;
    default:
      return false;
  }
}

void CardStrip::keyPressEvent(QKeyEvent* event) {
  if (carrying_ && keyWhileCarrying(event)) return;
  const int page = std::max(1, viewport()->width() / kCardStep);
  switch (event->key()) {
    case Qt::Key_Left:
      return setCurrent(current_ - 1);
    case Qt::Key_Right:
      return setCurrent(current_ + 1);
    case Qt::Key_PageUp:
      return setCurrent(current_ - page);
    case Qt::Key_PageDown:
      return setCurrent(current_ + page);
    case Qt::Key_Home:
      return setCurrent(0);
    case Qt::Key_End:
      return setCurrent(int(species_.size()) - 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (current() && !carrying_) emit lifted(text(current()->botanicalName));
      return;
    case Qt::Key_Space:
      if (current() && !carrying_) emit factsWanted(text(current()->botanicalName));
      return;
    default:
      QAbstractScrollArea::keyPressEvent(event);
  }
}

}  // namespace tussock
