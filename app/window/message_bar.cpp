// SPDX-License-Identifier: MIT
#include "app/window/message_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/theme.h"

namespace tussock {

MessageBar::MessageBar(QWidget* parent) : QFrame(parent), words_(new QLabel) {
  setObjectName(QStringLiteral("messageBar"));
  setProperty("look", QStringLiteral("card"));
  words_->setObjectName(QStringLiteral("messageWords"));
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

void MessageBar::tell(const QString& words) {
  ofEdit_ = false;
  words_->setText(words);
  show();
}

void MessageBar::tellOfEdit(const QString& words) {
  tell(words);
  ofEdit_ = true;
}

void MessageBar::editMade() {
  if (ofEdit_) dismiss();
}

void MessageBar::dismiss() {
  ofEdit_ = false;
  words_->clear();
  hide();
}

QString MessageBar::words() const {
  return words_->text();
}

}  // namespace tussock
