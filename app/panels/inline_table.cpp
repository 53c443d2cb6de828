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
    : InlineLines(std::move(read), std::move(write), parent) {
  lines()->setLineWrapMode(QPlainTextEdit::NoWrap);
  lines()->setFixedHeight(lines()->fontMetrics().lineSpacing() * kShownLines + 2 * kSpace2);
}

bool InlineTable::finishes(const QKeyEvent& key) const {
  return isEnter(key) && (key.modifiers() & Qt::ControlModifier);
}

}  // namespace tussock
