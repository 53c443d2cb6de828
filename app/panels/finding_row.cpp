// SPDX-License-Identifier: MIT
#include "app/panels/finding_row.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/mended_note.h"
#include "app/panels/species_marks.h"
#include "core/checks/describe.h"
#include "core/checks/registry.h"
#include "core/edit/draft.h"

namespace tussock {

namespace {

constexpr int kMark = 18;

QLabel* wrapped(const QString& name, const QString& look, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setProperty("look", look);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

QPushButton* button(const QString& name, const QString& words, QWidget* parent) {
  auto* made = new QPushButton(words, parent);
  made->setObjectName(name);
  return made;
}

// Findings that moving single plants can mend.
bool canSettle(const Finding& finding) {
  return finding.check == CheckId::Spacing || finding.check == CheckId::SetBack ||
         finding.check == CheckId::Obstructed || finding.check == CheckId::Pieces;
}

}  // namespace

FindingRow::FindingRow(Document& document, Finding finding, QWidget* parent)
    : QWidget(parent),
      document_(document),
      finding_(std::move(finding)),
      title_(wrapped(QStringLiteral("finding-title"), QStringLiteral("strong"), this)),
      text_(wrapped(QStringLiteral("finding-text"), QString(), this)),
      limit_(wrapped(QStringLiteral("finding-limit"), QStringLiteral("source"), this)),
      why_(wrapped(QStringLiteral("finding-why"), QStringLiteral("quiet"), this)) {
  setObjectName(QStringLiteral("finding"));
  setCursor(Qt::PointingHandCursor);
  buttons_ = makeButtons();
  reasonRow_ = makeReason();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kMark + kSpace3, kSpace2, 0, kSpace2);
  column->setSpacing(kSpace1);
  for (QLabel* label : {title_, text_, limit_, why_}) column->addWidget(label);
  column->addWidget(buttons_);
  column->addWidget(reasonRow_);
  reasonRow_->hide();
  refresh();
}

QWidget* FindingRow::makeButtons() {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, kSpace1, 0, 0);
  line->setSpacing(kSpace2);
  auto* show = button(QStringLiteral("finding-show"), tr("Show"), row);
  settle_ = button(QStringLiteral("finding-settle"), tr("Settle"), row);
  settle_->setToolTip(tr("Takes the plants concerned to the nearest places that keep the rules"));
  accept_ = button(QStringLiteral("finding-accept"), tr("Accept…"), row);
  reopen_ = button(QStringLiteral("finding-reopen"), tr("Reopen"), row);
  for (QPushButton* made : {show, settle_, accept_, reopen_}) line->addWidget(made);
  line->addStretch(1);
  connect(show, &QPushButton::clicked, this, [this] { emit chosen(finding_); });
  connect(settle_, &QPushButton::clicked, this, &FindingRow::settle);
  connect(accept_, &QPushButton::clicked, this, [this] { showReason(true); });
  connect(reopen_, &QPushButton::clicked, this, &FindingRow::reopen);
  return row;
}

QWidget* FindingRow::makeReason() {
  auto* row = new QWidget(this);
  reason_ = new QLineEdit(row);
  reason_->setObjectName(QStringLiteral("finding-reason"));
  reason_->setPlaceholderText(tr("Why may it stay?"));
  reason_->setAccessibleName(tr("Reason for accepting"));
  reason_->installEventFilter(this);
  wrong_ = wrapped(QStringLiteral("finding-reason-wrong"), QStringLiteral("error"), row);
  wrong_->hide();
  auto* done = button(QStringLiteral("finding-accept-now"), tr("Accept"), row);
  auto* cancel = button(QStringLiteral("finding-accept-cancel"), tr("Leave open"), row);
  auto* line = new QHBoxLayout;
  line->setSpacing(kSpace2);
  line->addWidget(done);
  line->addWidget(cancel);
  line->addStretch(1);
  auto* column = new QVBoxLayout(row);
  column->setContentsMargins(0, kSpace1, 0, 0);
  column->setSpacing(kSpace1 + 2);
  column->addWidget(reason_);
  column->addWidget(wrong_);
  column->addLayout(line);
  connect(reason_, &QLineEdit::returnPressed, this, &FindingRow::accept);
  connect(done, &QPushButton::clicked, this, &FindingRow::accept);
  connect(cancel, &QPushButton::clicked, this, [this] { showReason(false); });
  return row;
}

void FindingRow::show(const Finding& finding) {
  finding_ = finding;
  refresh();
}

void FindingRow::refresh() {
  const FindingText words =
      describe(finding_, document_.yard(), document_.facts(), document_.sunMap().get());
  const Acceptance* accepted = acceptanceOf(document_.yard(), finding_);
  title_->setText(text(words.title));
  text_->setText(text(words.text));
  limit_->setText(text(words.limit));
  limit_->setVisible(!words.limit.empty());
  why_->setText(accepted ? tr("Accepted: %1").arg(QString::fromStdString(accepted->reason))
                         : QString());
  why_->setVisible(accepted);
  accept_->setVisible(!accepted);
  accept_->setEnabled(!document_.isReadOnly());
  settle_->setVisible(!accepted && canSettle(finding_));
  settle_->setEnabled(!document_.isReadOnly());
  reopen_->setVisible(accepted);
  reopen_->setEnabled(!document_.isReadOnly());
  setAccessibleName(text(words.title));
  setAccessibleDescription(text(words.text));
  update();
}

void FindingRow::showReason(bool shown) {
  buttons_->setVisible(!shown);
  reasonRow_->setVisible(shown);
  wrong_->hide();
  reason_->clear();
  shown ? reason_->setFocus() : accept_->setFocus();
  if (shown) emit asking(reasonRow_);
}

void FindingRow::accept() {
  const QString reason = reason_->text().trimmed();
  if (reason.isEmpty()) {
    wrong_->setText(tr("Write a reason, so that whoever reads this next knows why it stays."));
    wrong_->show();
    reason_->setFocus();
    emit asking(reasonRow_);
    return;
  }
  Draft draft(document_.yard());
  draft.put(Acceptance{document_.ids().take<Acceptance>(), keyOf(finding_), reason.toStdString()});
  if (document_.commit(draft.finish(tr("Accept finding").toStdString()))) showReason(false);
}

void FindingRow::reopen() {
  const Acceptance* accepted = acceptanceOf(document_.yard(), finding_);
  if (!accepted) return;
  Draft draft(document_.yard());
  draft.remove(accepted->id);
  document_.commit(draft.finish(tr("Reopen finding").toStdString()));
}

void FindingRow::settle() {
  for (const ObjectRef ref : finding_.subjects) {
    const auto drift = idIf<Drift>(ref);
    if (!drift) continue;
    const MendedDrift mended = mendDrift(document_.yard(), document_.facts(), *drift);
    if (mended.edit.empty()) continue;
    const QString left = mendedNote(mended);
    if (!document_.commit(mended.edit)) return;
    if (!left.isEmpty()) emit told(left);
    emit settled();
    return;
  }
  why_->setText(tr("There is no free place near. Move the drift or take plants out."));
  why_->show();
}

bool FindingRow::eventFilter(QObject* watched, QEvent* event) {
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (watched != reason_ || !key || static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape)
    return QWidget::eventFilter(watched, event);
  event->accept();
  if (event->type() == QEvent::KeyPress) showReason(false);
  return event->type() == QEvent::KeyPress;
}

void FindingRow::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && rect().contains(event->position().toPoint()))
    emit chosen(finding_);
}

void FindingRow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintIcon(painter, findingMark(finding_.severity), QRectF(0, kSpace2, kMark, kMark));
}

}  // namespace tussock
