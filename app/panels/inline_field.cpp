// SPDX-License-Identifier: MIT
#include "app/panels/inline_field.h"

#include <QLineEdit>

namespace tussock {

InlineField::InlineField(Read read, Write write, QWidget* parent)
    : InlineField(std::move(read), std::move(write), new QLineEdit, parent) {}

InlineField::InlineField(Read read, Write write, QLineEdit* line, QWidget* parent)
    : InlineEdit(std::move(read), std::move(write), line, parent), line_(line) {
  connect(line_, &QLineEdit::editingFinished, this, [this] { finish(); });
  putBack();
}

QString InlineField::typed() const {
  return line_->text().trimmed();
}

void InlineField::display(const QString& words) {
  line_->setText(words);
  line_->setCursorPosition(0);
}

bool InlineField::isModified() const {
  return line_->isModified();
}

void InlineField::setModified(bool modified) {
  line_->setModified(modified);
}

}  // namespace tussock
