// SPDX-License-Identifier: MIT
#include "app/panels/inline_lines.h"

#include <QKeyEvent>
#include <QPlainTextEdit>

namespace tussock {

InlineLines::InlineLines(Read read, Write write, QWidget* parent)
    : InlineLines(std::move(read), std::move(write), new QPlainTextEdit, parent) {}

InlineLines::InlineLines(Read read, Write write, QPlainTextEdit* lines, QWidget* parent)
    : InlineEdit(std::move(read), std::move(write), lines, parent), lines_(lines) {
  lines_->setTabChangesFocus(true);
  putBack();
}

bool InlineLines::isEnter(const QKeyEvent& key) {
  return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
}

QString InlineLines::typed() const {
  return lines_->toPlainText();
}

void InlineLines::display(const QString& words) {
  if (lines_->toPlainText() != words) lines_->setPlainText(words);
}

bool InlineLines::isModified() const {
  return lines_->document()->isModified();
}

void InlineLines::setModified(bool modified) {
  lines_->document()->setModified(modified);
}

bool InlineLines::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) finish();
  return InlineEdit::eventFilter(watched, event);
}

}  // namespace tussock
