// SPDX-License-Identifier: MIT
#include "app/window/message_bar.h"

#include <algorithm>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/theme.h"

namespace tussock {

namespace {
constexpr int kMostWidth = 640;                 // pixels
constexpr int kBesideWords = 2 * kSpace5 + 60;  // sign, button and the room around them
}  // namespace

MessageBar::MessageBar() : words_(new QLabel) {
  setObjectName(QStringLiteral("messageBar"));
  setProperty("look", QStringLiteral("card"));
  setAttribute(Qt::WA_NoMousePropagation);  // a click on it is not meant for the plan
  words_->setObjectName(QStringLiteral("messageWords"));
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* sign = new QLabel;
  sign->setPixmap(icon(QStringLiteral("finding-caution")).pixmap(18, 18));
  auto* close = new QToolButton;
  close->setObjectName(QStringLiteral("messageClose"));
  close->setIcon(icon(QStringLiteral("close")));
  close->setAutoRaise(true);
  close->setToolTip(tr("Put away"));
  close->setAccessibleName(tr("Put the message away"));
  connect(close, &QToolButton::clicked, this, &MessageBar::dismiss);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kSpace3, kSpace2, kSpace2, kSpace2);
  row->setSpacing(kSpace2);
  row->addWidget(sign);
  row->addWidget(words_, 1);
  row->addWidget(close);
  hide();
}

void MessageBar::floatOver(QWidget& area, QWidget* above) {
  if (parentWidget()) parentWidget()->removeEventFilter(this);
  if (above_) above_->removeEventFilter(this);
  const bool shown = !isHidden();
  above_ = above;
  if (above_) above_->installEventFilter(this);
  setParent(&area);
  area.installEventFilter(this);
  if (shown) show();
  place();
}

void MessageBar::place() {
  if (isHidden() || !parentWidget()) return;
  const int wish = words_->fontMetrics().size(0, words_->text()).width() + kBesideWords;
  const int width = std::min({wish, kMostWidth, parentWidget()->width() - 2 * kSpace4});
  const int top =
      above_ && above_->isVisible() ? above_->geometry().bottom() + 1 + kSpace2 : kSpace3;
  setGeometry((parentWidget()->width() - width) / 2, top, width, heightForWidth(width));
  raise();
}

bool MessageBar::eventFilter(QObject* watched, QEvent* event) {
  switch (event->type()) {
    case QEvent::Resize:
    case QEvent::Move:
    case QEvent::Show:
    case QEvent::Hide:
      place();
      break;
    default:
      break;
  }
  return QFrame::eventFilter(watched, event);
}

void MessageBar::tell(const QString& words) {
  outlastsEdits_ = false;
  words_->setText(words);
  show();
  place();
}

void MessageBar::tellNotice(const QString& words) {
  tell(words);
  outlastsEdits_ = true;
}

void MessageBar::editMade() {
  if (!outlastsEdits_) dismiss();
}

void MessageBar::dismiss() {
  outlastsEdits_ = false;
  words_->clear();
  hide();
}

QString MessageBar::words() const {
  return words_->text();
}

}  // namespace tussock
