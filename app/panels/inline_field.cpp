// SPDX-License-Identifier: MIT
#include "app/panels/inline_field.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QStyle>
#include <QVBoxLayout>

namespace tussock {

InlineField::InlineField(std::function<QString()> read,
                         std::function<QString(const QString&)> write, QWidget* parent)
    : QWidget(parent),
      read_(std::move(read)),
      write_(std::move(write)),
      line_(new QLineEdit(this)),
      wrong_(new QLabel(this)) {
  wrong_->setProperty("look", QStringLiteral("error"));
  wrong_->setWordWrap(true);
  wrong_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(line_);
  column->addWidget(wrong_);
  setFocusProxy(line_);
  line_->installEventFilter(this);
  connect(line_, &QLineEdit::editingFinished, this, &InlineField::finish);
  refresh();
}

// The line loses the focus while it is being deleted; by then there is nothing to read or write.
InlineField::~InlineField() {
  line_->removeEventFilter(this);
  line_->disconnect(this);
}

void InlineField::refresh() {
  const bool refused = !wrong_->isHidden();
  const bool typing = line_->hasFocus() && line_->isModified();
  if (refused ? read_() == shown_ : typing) return;
  putBack();
}

void InlineField::forgetRefused() {
  if (!wrong_->isHidden()) putBack();
}

void InlineField::putBack() {
  shown_ = read_();
  line_->setText(shown_);
  line_->setCursorPosition(0);
  say({});
}

void InlineField::finish() {
  if (finishing_) return;  // an edit may move the focus and so finish the field again
  const QScopedValueRollback guard(finishing_, true);
  if (line_->text().trimmed() == shown_) return putBack();
  const QString wrong = write_(line_->text().trimmed());
  if (!wrong.isEmpty()) return say(wrong);
  putBack();
}

void InlineField::say(const QString& wrong) {
  wrong_->setObjectName(line_->objectName() + QStringLiteral("-wrong"));
  wrong_->setText(wrong);
  wrong_->setVisible(!wrong.isEmpty());
  line_->setAccessibleDescription(wrong);
  line_->setModified(!wrong.isEmpty());
  if (line_->property("wrong").toBool() == !wrong.isEmpty()) return;
  line_->setProperty("wrong", !wrong.isEmpty());
  line_->style()->unpolish(line_);
  line_->style()->polish(line_);
}

// Where nothing is being typed, the keys of undo and redo are meant for the last edit.
bool InlineField::isMeantForWindow(QEvent* event) const {
  if (event->type() != QEvent::ShortcutOverride || line_->isModified()) return false;
  const auto* key = static_cast<QKeyEvent*>(event);
  return key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo);
}

bool InlineField::eventFilter(QObject* watched, QEvent* event) {
  if (isMeantForWindow(event)) {
    event->ignore();
    return true;
  }
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (!key || static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape)
    return QWidget::eventFilter(watched, event);
  if (line_->text() == shown_ && wrong_->isHidden()) return QWidget::eventFilter(watched, event);
  event->accept();
  if (event->type() == QEvent::KeyPress) putBack();
  return event->type() == QEvent::KeyPress;
}

}  // namespace tussock
