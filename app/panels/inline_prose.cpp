// SPDX-License-Identifier: MIT
#include "app/panels/inline_prose.h"

#include <algorithm>
#include <cmath>
#include <QAbstractTextDocumentLayout>
#include <QKeyEvent>
#include <QPlainTextEdit>
#include <QTextBlock>
#include <QTextDocument>
#include <QTimer>

namespace tussock {

namespace {

constexpr int kMostProseLines = 12;
constexpr int kProseMargin = 1;  // of the words within the field
// Border and padding of the style sheet, the margin above, and the pixel that the editor wants over
// what it holds, lest it scrolls.
constexpr int kProseRim = 2 * (1 + 3) + kProseMargin + 1;

}  // namespace

InlineProse::InlineProse(Read read, Write write, QWidget* parent)
    : InlineProse(std::move(read), std::move(write), new QPlainTextEdit, parent) {}

InlineProse::InlineProse(Read read, Write write, QPlainTextEdit* lines, QWidget* parent)
    : InlineEdit(std::move(read), std::move(write), lines, parent), lines_(lines) {
  lines_->setTabChangesFocus(true);
  lines_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  lines_->document()->setDocumentMargin(kProseMargin);
  connect(lines_, &QPlainTextEdit::textChanged, this, &InlineProse::fitHeight);
  putBack();
  fitHeight();
}

// Asking for a block's place lays it out at the width of now.
void InlineProse::fitHeight() {
  const int line = lines_->fontMetrics().lineSpacing();
  double needed = 0.0;
  for (QTextBlock at = lines_->document()->begin(); at.isValid(); at = at.next())
    needed += lines_->document()->documentLayout()->blockBoundingRect(at).height();
  const int most = kMostProseLines * line, height = std::max(line, int(std::ceil(needed)));
  lines_->setVerticalScrollBarPolicy(height > most ? Qt::ScrollBarAsNeeded
                                                   : Qt::ScrollBarAlwaysOff);
  lines_->setFixedHeight(std::min(height, most) + kProseRim);
}

// What was pasted may have had line ends.
QString InlineProse::typed() const {
  return lines_->toPlainText().simplified();
}

void InlineProse::display(const QString& words) {
  if (lines_->toPlainText() != words) lines_->setPlainText(words);
}

bool InlineProse::isModified() const {
  return lines_->document()->isModified();
}

void InlineProse::setModified(bool modified) {
  lines_->document()->setModified(modified);
}

bool InlineProse::finishes(const QKeyEvent& key) const {
  return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
}

bool InlineProse::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) finish();
  if (event->type() == QEvent::Resize)  // once its words are laid out anew
    QTimer::singleShot(0, this, &InlineProse::fitHeight);
  return InlineEdit::eventFilter(watched, event);
}

}  // namespace tussock
