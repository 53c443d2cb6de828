// SPDX-License-Identifier: MIT
#include "app/window/first_steps.h"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/window/actions.h"

namespace tussock {

namespace {

constexpr int kLinkPadding = 5;  // of a link's words within it, pixels

QLabel* stepWords(const QString& text, const char* look) {
  auto* label = new QLabel(text);
  label->setProperty("look", QString::fromLatin1(look));
  return label;
}

QAction* named(const QActionGroup& group, const char* name) {
  for (QAction* action : group.actions())
    if (action->objectName() == QLatin1String(name)) return action;
  return nullptr;
}

}  // namespace

FirstSteps::FirstSteps(QWidget& canvas, const Actions& actions, const QActionGroup& tools)
    : QFrame(&canvas), column_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("firstSteps"));
  setProperty("look", QStringLiteral("card"));
  setAttribute(Qt::WA_NoMousePropagation);
  column_->setContentsMargins(kSpace5, kSpace4, kSpace5, kSpace4);
  column_->setSpacing(kSpace2);
  column_->addWidget(stepWords(tr("Nothing is drawn yet"), "heading"));
  addStep(tr("Bring in a photo to trace"), actions.photo);
  addStep(tr("Import a site from GeoJSON"), actions.importSite);
  addStep(tr("Draw the lot line"), named(tools, "toolLotLine"));
  addStep(tr("Draw a bed"), named(tools, "toolBed"));
  column_->addWidget(stepWords(tr("A PNG or JPEG can also be dropped here."), "note"));
  canvas.installEventFilter(this);
  hide();
}

void FirstSteps::addStep(const QString& words_, QAction* action) {
  if (!action) return;
  auto* step = new QPushButton(words_);
  step->setObjectName(QLatin1String("first-") + action->objectName());
  step->setProperty("look", QStringLiteral("link"));
  connect(step, &QPushButton::clicked, action, &QAction::trigger);
  auto* row = new QHBoxLayout;
  row->setContentsMargins(-kLinkPadding, 0, 0, 0);  // words in line with the heading
  row->setSpacing(kSpace5);
  row->addWidget(step);
  row->addStretch(1);
  row->addWidget(stepWords(action->shortcut().toString(QKeySequence::NativeText), "note"));
  column_->addLayout(row);
}

void FirstSteps::stayInTheMiddle() {
  adjustSize();
  const QRect all = parentWidget()->rect();
  move(all.center() - rect().center());
}

void FirstSteps::showEvent(QShowEvent* event) {
  stayInTheMiddle();
  QFrame::showEvent(event);
}

bool FirstSteps::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && isVisible()) stayInTheMiddle();
  return QFrame::eventFilter(watched, event);
}

}  // namespace tussock
