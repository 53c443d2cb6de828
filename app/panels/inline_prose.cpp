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
    : InlineLines(std::move(read), std::move(write), parent) {
  lines()->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  lines()->document()->setDocumentMargin(kProseMargin);
  connect(lines(), &QPlainTextEdit::textChanged, this, &InlineProse::fitHeight);
  fitHeight();
}

// Asking for a block's place lays it out at the width of now.
void InlineProse::fitHeight() {
  const int line = lines()->fontMetrics().lineSpacing();
  double needed = 0.0;
  for (QTextBlock at = lines()->document()->begin(); at.isValid(); at = at.next())
    needed += lines()->document()->documentLayout()->blockBoundingRect(at).height();
  const int most = kMostProseLines * line, height = std::max(line, int(std::ceil(needed)));
  lines()->setVerticalScrollBarPolicy(height > most ? Qt::ScrollBarAsNeeded
                                                    : Qt::ScrollBarAlwaysOff);
  lines()->setFixedHeight(std::min(height, most) + kProseRim);
}

// What was pasted may have had line ends.
QString InlineProse::typed() const {
  return InlineLines::typed().simplified();
}

bool InlineProse::finishes(const QKeyEvent& key) const {
  return isEnter(key);
}

bool InlineProse::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize)  // once its words are laid out anew
    QTimer::singleShot(0, this, &InlineProse::fitHeight);
  return InlineLines::eventFilter(watched, event);
}

}  // namespace tussock
