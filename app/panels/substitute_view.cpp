// SPDX-License-Identifier: MIT
#include "app/panels/substitute_view.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/botanical.h"
#include "app/look/theme.h"
#include "app/panels/plain_label.h"
#include "app/panels/reason_words.h"
#include "app/panels/scrolled.h"
#include "app/panels/species_marks.h"

namespace tussock {

SubstituteView::SubstituteView(Document& document, Substitutes& substitutes, Id<Drift> drift,
                               QWidget* parent)
    : QWidget(parent),
      document_(document),
      substitutes_(substitutes),
      id_(drift),
      ask_(new QPushButton(this)),
      said_(plainLabel({}, "note", this)),
      column_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("substitutes"));
  column_->setContentsMargins(0, kSpace1, 0, 0);
  column_->setSpacing(kSpace2);
  ask_->setObjectName(QStringLiteral("substitute-ask"));
  ask_->setText(tr("Find another species for it"));
  ask_->setToolTip(tr("For a species that cannot be had: those most alike that suit the beds"));
  said_->setObjectName(QStringLiteral("substitute-said"));
  column_->addWidget(ask_, 0, Qt::AlignLeft);
  column_->addWidget(said_);
  connect(ask_, &QPushButton::clicked, this, &SubstituteView::ask);
  connect(&substitutes_, &Substitutes::changed, this, &SubstituteView::refresh);
  refresh();
}

const Drift* SubstituteView::drift() const {
  return document_.yard().drifts.find(id_);
}

void SubstituteView::ask() {
  if (const Drift* found = drift()) substitutes_.look(found->species);
}

void SubstituteView::refresh() {
  const Drift* found = drift();
  if (!found) return;
  const bool ours = substitutes_.species() == found->species;
  const auto state = ours ? substitutes_.state() : Substitutes::State::Idle;
  if (ask_->hasFocus() && state != Substitutes::State::Idle) setFocus();  // it is about to hide
  ask_->setVisible(state == Substitutes::State::Idle);
  ask_->setEnabled(!document_.isReadOnly() && document_.facts().find(found->species) != nullptr);
  said_->setVisible(state != Substitutes::State::Idle);
  const bool pressed = rows_ && rows_->isAncestorOf(QApplication::focusWidget());
  if (rows_) {  // a button of these may have asked for this
    if (pressed && state == Substitutes::State::Idle) ask_->setFocus();
    rows_->hide();
    rows_->deleteLater();
    rows_ = nullptr;
  }
  if (state == Substitutes::State::Looking) said_->setText(tr("Trying species that are like it…"));
  if (state == Substitutes::State::Found) showFound();
}

void SubstituteView::showFound() {
  const auto& found = substitutes_.found();
  said_->setText(found.empty()
                     ? tr("No species suits the beds and finds a place in them, or its drifts are "
                          "locked or stand there already.")
                     : tr("Best first: most alike, with least ground left bare. Each takes the "
                          "ground of all its drifts; locked ones and those that stand there "
                          "already stay."));
  rows_ = new QWidget(this);
  auto* column = new QVBoxLayout(rows_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace2);
  for (const Substitute& one : found) column->addWidget(rowFor(one));
  column_->addWidget(rows_);
  rows_->show();
  auto* first = rows_->findChild<QPushButton*>(QStringLiteral("substitute-put"));
  if (first && hasFocus()) first->setFocus();
  if (first) bringIntoView(first->parentWidget());  // the whole card
}

QWidget* SubstituteView::rowFor(const Substitute& one) {
  auto* card = new QFrame(rows_);
  card->setProperty("look", QStringLiteral("card"));
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(kSpace3, kSpace2, kSpace2, kSpace2);
  column->setSpacing(2);
  auto* head = new QHBoxLayout;
  auto* name = plainLabel(botanicalHtml(text(one.species->botanicalName)), "strong", card);
  name->setTextFormat(Qt::RichText);
  auto* names = new QVBoxLayout;
  names->setSpacing(2);
  names->addWidget(name);
  names->addWidget(plainLabel(text(one.species->commonName), "quiet", card));
  head->addLayout(names, 1);
  auto* put = new QPushButton(tr("Swap"), card);
  put->setObjectName(QStringLiteral("substitute-put"));
  put->setToolTip(tr("Puts %1 in the place of %2; undo brings it back")
                      .arg(text(one.species->botanicalName), text(substitutes_.species())));
  connect(put, &QPushButton::clicked, this,
          [this, species = one.species] { substitutes_.put(*species); });
  head->addWidget(put, 0, Qt::AlignTop);
  column->addLayout(head);
  auto* count = plainLabel(countWords(one), "", card);
  count->setObjectName(QStringLiteral("substitute-count"));
  column->addWidget(count);
  if (!one.differences.empty())
    column->addWidget(plainLabel(reasonWords(one.differences) + '.', "note", card));
  auto* caused = plainLabel(causedWords(one), "note", card);
  caused->setObjectName(QStringLiteral("substitute-caused"));
  column->addWidget(caused);
  return card;
}

QString SubstituteView::countWords(const Substitute& one) const {
  const QString plants = tr("%1 plants in place of %2; %3 of 100 alike.")
                             .arg(plantsAfter(one.done))
                             .arg(plantsBefore(one.done))
                             .arg(qRound(one.likeness));
  const QString ground = text(groundWords(one.done, document_.yard().settings.units));
  return ground.isEmpty() ? plants : plants + QLatin1Char(' ') + ground;
}

QString SubstituteView::causedWords(const Substitute& one) const {
  QStringList words;
  if (one.caused.size() == 1)
    words << tr("Causes one finding: %1").arg(text(one.causedTexts.front()));
  else if (!one.caused.empty())
    words << tr("Causes %1 findings. The first: %2")
                 .arg(one.caused.size())
                 .arg(text(one.causedTexts.front()));
  if (one.worsened.size() == 1)
    words << tr("Makes one finding worse: %1").arg(text(one.worsenedTexts.front()));
  else if (!one.worsened.empty())
    words << tr("Makes %1 findings worse. The first: %2")
                 .arg(one.worsened.size())
                 .arg(text(one.worsenedTexts.front()));
  return words.isEmpty() ? tr("Causes no finding.") : words.join(QLatin1Char('\n'));
}

}  // namespace tussock
