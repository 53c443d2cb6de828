// SPDX-License-Identifier: MIT
#include "app/canvas/canvas_field.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/look/theme.h"

namespace tussock {

CanvasField::CanvasField(QWidget* canvas)
    : QFrame(canvas), label_(new QLabel), edit_(new QLineEdit), trouble_(new QLabel) {
  setObjectName(QStringLiteral("canvasField"));
  setAttribute(Qt::WA_NoMousePropagation);
  setProperty("look", QStringLiteral("card"));
  edit_->setObjectName(QStringLiteral("canvasFieldText"));
  edit_->setFixedWidth(160);
  edit_->installEventFilter(this);
  label_->setProperty("look", QStringLiteral("note"));
  label_->setBuddy(edit_);
  trouble_->setObjectName(QStringLiteral("canvasFieldTrouble"));
  trouble_->setProperty("look", QStringLiteral("error"));
  trouble_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace2, kSpace2, kSpace2, kSpace2);
  column->setSpacing(kSpace1);
  for (QWidget* part : {static_cast<QWidget*>(label_), static_cast<QWidget*>(edit_),
                        static_cast<QWidget*>(trouble_)})
    column->addWidget(part);
  connect(edit_, &QLineEdit::textEdited, trouble_, &QLabel::hide);
  hide();
}

void CanvasField::ask(QPointF at, const QString& label, const QString& start, Take take) {
  take_ = std::move(take);
  label_->setText(label);
  trouble_->hide();
  edit_->setText(start);
  edit_->setAccessibleName(label);
  adjustSize();
  moveWithin(at.toPoint() + QPoint(kSpace4, kSpace4));
  show();
  raise();
  edit_->setFocus();
  if (!start.isEmpty()) edit_->end(false);
}

void CanvasField::moveWithin(QPoint wanted) {
  const QRect room = parentWidget()->rect().adjusted(0, 0, -width(), -height());
  move(std::clamp(wanted.x(), 0, std::max(0, room.right())),
       std::clamp(wanted.y(), 0, std::max(0, room.bottom())));
}

void CanvasField::dismiss() {
  if (!isVisible()) return;
  hide();
  parentWidget()->setFocus();
}

void CanvasField::accept() {
  const QString trouble = take_ ? take_(edit_->text()) : QString();
  if (trouble.isEmpty()) return dismiss();
  trouble_->setText(trouble);
  trouble_->show();
  adjustSize();
  moveWithin(pos());
}

bool CanvasField::eventFilter(QObject* watched, QEvent* event) {
  if (watched != edit_ || event->type() != QEvent::KeyPress)
    return QFrame::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key == Qt::Key_Return || key == Qt::Key_Enter) return accept(), true;
  if (key == Qt::Key_Escape) return dismiss(), true;
  return false;
}

}  // namespace tussock
