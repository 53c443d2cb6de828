// SPDX-License-Identifier: MIT
#include "app/panels/inline_edit.h"

#include <QKeyEvent>
#include <QLabel>
#include <QScopedValueRollback>
#include <QStyle>
#include <QVBoxLayout>

namespace tussock {

namespace {

void setStyled(QWidget& widget, const char* property, const QVariant& value) {
  if (widget.property(property) == value) return;
  widget.setProperty(property, value);
  widget.style()->unpolish(&widget);
  widget.style()->polish(&widget);
}

}  // namespace

InlineEdit::InlineEdit(Read read, Write write, QWidget* editor, QWidget* parent)
    : QWidget(parent),
      read_(std::move(read)),
      write_(std::move(write)),
      editor_(editor),
      wrong_(new QLabel(this)) {
  wrong_->setWordWrap(true);
  wrong_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(editor_);
  column->addWidget(wrong_);
  setFocusProxy(editor_);
  editor_->installEventFilter(this);
}

// It loses the focus while it is being deleted; by then there is nothing to read or write.
InlineEdit::~InlineEdit() {
  editor_->removeEventFilter(this);
  editor_->disconnect(this);
}

void InlineEdit::refresh() {
  const bool refused = !wrong_->isHidden();
  const bool typing = editor_->hasFocus() && isModified();
  if (refused ? read_() == shown_ : typing) return;
  putBack();
}

bool InlineEdit::forgetRefused() {
  if (wrong_->isHidden()) return false;
  putBack();
  return true;
}

void InlineEdit::putBack() {
  shown_ = read_();
  display(shown_);
  say({}, Said::Told);
}

void InlineEdit::finish() {
  if (finishing_) return;  // an edit may move the focus and so finish the field again
  const QScopedValueRollback guard(finishing_, true);
  if (typed() == shown_) return putBack();
  const QString before = shown_;
  const QString words = write_(typed());
  const bool taken = words.isEmpty() || read_() != before;
  if (taken) putBack();  // what was made of it, beside the words
  if (!words.isEmpty()) say(words, taken ? Said::Told : Said::Refused);
}

void InlineEdit::say(const QString& words, Said said) {
  const bool refused = said == Said::Refused && !words.isEmpty();
  refused_ = refused ? typed() : QString();
  wrong_->setObjectName(editor_->objectName() + QStringLiteral("-wrong"));
  wrong_->setText(words);
  wrong_->setVisible(!words.isEmpty());
  editor_->setAccessibleDescription(words);
  setModified(refused);
  setStyled(*wrong_, "look", refused ? QStringLiteral("error") : QStringLiteral("note"));
  setStyled(*editor_, "wrong", refused);
}

bool InlineEdit::finishes(const QKeyEvent&) const {
  return false;
}

// Where nothing is being typed, the keys of undo and redo are meant for the last edit.
bool InlineEdit::isMeantForWindow(const QEvent& event) const {
  if (event.type() != QEvent::ShortcutOverride || isModified()) return false;
  const auto& key = static_cast<const QKeyEvent&>(event);
  return key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo);
}

// Nothing more has been typed since.
bool InlineEdit::isRefused() const {
  return editor_->property("wrong").toBool() && typed() == refused_;
}

bool InlineEdit::takeKey(const QEvent& event) {
  const auto& key = static_cast<const QKeyEvent&>(event);
  const bool pressed = event.type() == QEvent::KeyPress;
  if (key.key() == Qt::Key_Escape) {
    if (typed() == shown_ && wrong_->isHidden()) return false;
    if (pressed) putBack();
    return true;
  }
  if (key.matches(QKeySequence::Undo) && isRefused()) {
    if (pressed) putBack();
    return true;
  }
  if (!pressed || !finishes(key)) return false;
  finish();
  return true;
}

bool InlineEdit::eventFilter(QObject* watched, QEvent* event) {
  if (isMeantForWindow(*event)) {
    event->ignore();
    return true;
  }
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (!key || !takeKey(*event)) return QWidget::eventFilter(watched, event);
  event->accept();
  return event->type() == QEvent::KeyPress;
}

}  // namespace tussock
