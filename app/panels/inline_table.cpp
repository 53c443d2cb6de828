// SPDX-License-Identifier: MIT
#include "app/panels/inline_table.h"

#include <algorithm>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "app/look/theme.h"

namespace tussock {

namespace {
constexpr int kShownLines = 4;
}

InlineTable::InlineTable(std::function<QString()> read,
                         std::function<QString(const QString&)> write, QWidget* parent)
    : QWidget(parent),
      read_(std::move(read)),
      write_(std::move(write)),
      lines_(new QPlainTextEdit(this)),
      wrong_(new QLabel(this)) {
  wrong_->setProperty("look", QStringLiteral("error"));
  wrong_->setWordWrap(true);
  wrong_->hide();
  lines_->setTabChangesFocus(true);
  lines_->setLineWrapMode(QPlainTextEdit::NoWrap);
  lines_->setFixedHeight(lines_->fontMetrics().lineSpacing() * kShownLines + 2 * kSpace2);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(lines_);
  column->addWidget(wrong_);
  setFocusProxy(lines_);
  lines_->installEventFilter(this);
  putBack();
}

// The lines lose the focus while they are being deleted; by then there is nothing to read or write.
InlineTable::~InlineTable() {
  lines_->removeEventFilter(this);
}

void InlineTable::refresh() {
  const bool typing = lines_->hasFocus() && lines_->document()->isModified();
  if (typing || !wrong_->isHidden()) return;
  putBack();
}

void InlineTable::putBack() {
  shown_ = read_();
  if (lines_->toPlainText() != shown_) lines_->setPlainText(shown_);
  say({});
}

void InlineTable::finish() {
  if (lines_->toPlainText() == shown_) return putBack();
  const QString wrong = write_(lines_->toPlainText());
  if (!wrong.isEmpty()) return say(wrong);
  putBack();
}

void InlineTable::say(const QString& wrong) {
  wrong_->setObjectName(lines_->objectName() + QStringLiteral("-wrong"));
  wrong_->setText(wrong);
  wrong_->setVisible(!wrong.isEmpty());
  lines_->setAccessibleDescription(wrong);
  lines_->document()->setModified(!wrong.isEmpty());
}

bool InlineTable::takeKey(const QEvent& event) {
  const auto& key = static_cast<const QKeyEvent&>(event);
  const bool pressed = event.type() == QEvent::KeyPress;
  if (key.key() == Qt::Key_Escape) {
    if (lines_->toPlainText() == shown_ && wrong_->isHidden()) return false;
    if (pressed) putBack();
    return true;
  }
  const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
  if (!pressed || !enter || !(key.modifiers() & Qt::ControlModifier)) return false;
  finish();
  return true;
}

bool InlineTable::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) finish();
  if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
    return QWidget::eventFilter(watched, event);
  if (!takeKey(*event)) return QWidget::eventFilter(watched, event);
  event->accept();
  return event->type() == QEvent::KeyPress;
}

}  // namespace tussock
