// SPDX-License-Identifier: MIT
#include "app/panels/inline_table.h"

#include <QKeyEvent>
#include <QPlainTextEdit>

#include "app/look/theme.h"

namespace tussock {

namespace {
constexpr int kShownLines = 4;
}

InlineTable::InlineTable(Read read, Write write, QWidget* parent)
    : InlineTable(std::move(read), std::move(write), new QPlainTextEdit, parent) {}

InlineTable::InlineTable(Read read, Write write, QPlainTextEdit* lines, QWidget* parent)
    : InlineEdit(std::move(read), std::move(write), lines, parent), lines_(lines) {
  lines_->setTabChangesFocus(true);
  lines_->setLineWrapMode(QPlainTextEdit::NoWrap);
  lines_->setFixedHeight(lines_->fontMetrics().lineSpacing() * kShownLines + 2 * kSpace2);
  putBack();
}

QString InlineTable::typed() const {
  return lines_->toPlainText();
}

void InlineTable::display(const QString& words) {
  if (lines_->toPlainText() != words) lines_->setPlainText(words);
}

bool InlineTable::isModified() const {
  return lines_->document()->isModified();
}

void InlineTable::setModified(bool modified) {
  lines_->document()->setModified(modified);
}

bool InlineTable::finishes(const QKeyEvent& key) const {
  const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
  return enter && (key.modifiers() & Qt::ControlModifier);
}

bool InlineTable::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) finish();
  return InlineEdit::eventFilter(watched, event);
}

}  // namespace tussock
