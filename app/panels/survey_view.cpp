// SPDX-License-Identifier: MIT
#include "app/panels/survey_view.h"

#include <cmath>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

#include "app/canvas/reading_words.h"
#include "app/look/theme.h"
#include "app/panels/field_text.h"
#include "app/panels/scrolled.h"
#include "core/planting/grow.h"
#include "core/sun/survey_reading.h"

namespace tussock {

namespace {

QLabel* cell(const QString& words, const char* look, Qt::Alignment at = Qt::AlignLeft) {
  auto* label = new QLabel(words);
  label->setProperty("look", QLatin1String(look));
  label->setAlignment(at | Qt::AlignVCenter);
  return label;
}

// What was noted with a reading, or else the bed that it was taken in.
QString whereWords(const SunReading& reading, const Yard& yard) {
  if (!reading.note.empty()) return QString::fromStdString(reading.note);
  const Bed* bed = bedAt(yard, reading.at);
  return bed ? QString::fromStdString(bed->name) : QString();
}

// Heights are held between 0.3 and 3 times that drawn, light between none and all.
QString endWords(const FittedValue& value) {
  switch (value.end) {
    case FittedValue::End::None:
      return {};
    case FittedValue::End::Least:
      return SurveyView::tr(" (the least that is tried)");
    case FittedValue::End::Most:
      return SurveyView::tr(" (the most that is tried)");
  }
  return {};
}

}  // namespace

SurveyView::SurveyView(Document& document, SunSurvey& survey, QWidget* parent)
    : QWidget(parent),
      document_(document),
      survey_(survey),
      column_(new QVBoxLayout(this)),
      sum_(cell({}, "note")),
      unused_(cell({}, "note")),
      look_(button(QStringLiteral("survey-look"), tr("Look for trees that fit"))),
      offer_(new QLabel),
      apply_(button(QStringLiteral("survey-apply"), tr("Change the trees"))),
      dismiss_(button(QStringLiteral("survey-dismiss"), tr("Leave them"))) {
  setObjectName(QStringLiteral("survey"));
  column_->setContentsMargins(0, 0, 0, 0);
  column_->setSpacing(kSpace2);
  column_->addWidget(cell(tr("Sun survey"), "strong"));
  sum_->setObjectName(QStringLiteral("survey-sum"));
  sum_->setWordWrap(true);
  offer_->setObjectName(QStringLiteral("survey-offer"));
  offer_->setWordWrap(true);
  auto* answers = new QHBoxLayout;
  answers->addWidget(apply_);
  answers->addWidget(dismiss_);
  answers->addStretch(1);
  unused_->setObjectName(QStringLiteral("survey-unused"));
  unused_->setWordWrap(true);
  column_->addWidget(sum_);
  column_->addWidget(unused_);
  column_->addWidget(look_, 0, Qt::AlignLeft);
  column_->addWidget(offer_);
  column_->addLayout(answers);
  connect(look_, &QPushButton::clicked, &survey_, &SunSurvey::lookForTrees);
  connect(apply_, &QPushButton::clicked, &survey_, &SunSurvey::applyOffer);
  connect(dismiss_, &QPushButton::clicked, &survey_, &SunSurvey::dismissOffer);
  connect(&survey_, &SunSurvey::changed, this, &SurveyView::refresh);
  refresh();
}

QPushButton* SurveyView::button(const QString& name, const QString& words) {
  auto* made = new QPushButton(words);
  made->setObjectName(name);
  return made;
}

void SurveyView::refresh() {
  showUnused();
  const bool any = !survey_.compared().empty();
  setVisible(any || !unused_->text().isEmpty());
  for (QWidget* part : {static_cast<QWidget*>(sum_), static_cast<QWidget*>(look_)})
    part->setVisible(any);
  if (!any && table_) table_->hide();
  if (!any) return;
  showReadings();
  showOffer();
}

// Readings that cannot be what was seen, such as those of another program's file.
void SurveyView::showUnused() {
  QStringList lines;
  for (const SunReading& reading : document_.yard().sunReadings)
    if (const auto problem = readingProblem(reading, document_.yard().settings))
      lines << tr("Not used: %1").arg(QString::fromStdString(*problem));
  unused_->setText(lines.join(QLatin1Char('\n')));
  unused_->setVisible(!lines.isEmpty());
}

void SurveyView::showReadings() {
  if (table_) table_->hide(), table_->deleteLater();
  table_ = new QWidget(this);
  auto* grid = new QGridLayout(table_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(kSpace3);
  grid->setVerticalSpacing(kSpace1);
  grid->setColumnStretch(0, 1);
  const QStringList heads{tr("Day"), tr("seen"), tr("computed"), tr("difference")};
  for (int i = 0; i < heads.size(); ++i)
    grid->addWidget(cell(heads[i], "note", i == 0 ? Qt::AlignLeft : Qt::AlignRight), 0, i);
  int row = 1;
  for (const ReadingCompared& compared : survey_.compared()) addRow(row++, compared);
  column_->insertWidget(1, table_);
  table_->show();
  sum_->setText(tr("%1 h off at a reading, as the root of the mean square. Difference is seen less "
                   "computed.")
                    .arg(QLocale().toString(rmsOf(survey_.compared()), 'f', 1)));
}

void SurveyView::addRow(int row, const ReadingCompared& compared) {
  auto* grid = qobject_cast<QGridLayout*>(table_->layout());
  const SunReading* reading = document_.yard().sunReadings.find(compared.reading);
  if (!grid || !reading) return;
  auto* day = new QPushButton(QString::fromStdString(formatDate(reading->day)));
  day->setObjectName(QStringLiteral("survey-reading-%1").arg(compared.reading.value()));
  day->setProperty("look", QStringLiteral("link"));
  connect(day, &QPushButton::clicked, this,
          [this, ref = refTo(compared.reading)] { document_.select({ref}); });
  auto* first = new QVBoxLayout;
  first->setSpacing(0);
  first->addWidget(day, 0, Qt::AlignLeft);
  if (const QString where = whereWords(*reading, document_.yard()); !where.isEmpty()) {
    QLabel* place = cell(where, "note");
    place->setWordWrap(true);
    first->addWidget(place);
  }
  grid->addLayout(first, row, 0);
  grid->addWidget(cell(hoursText(compared.observed), "body", Qt::AlignRight), row, 1);
  grid->addWidget(cell(hoursText(compared.computed), "body", Qt::AlignRight), row, 2);
  grid->addWidget(cell(differenceWords(compared.residual()), "strong", Qt::AlignRight), row, 3);
}

QString SurveyView::wordsOf(const FittedValue& value) const {
  const Tree* tree = document_.yard().trees.find(value.tree);
  const QString name = tree ? QString::fromStdString(tree->name) : QString();
  const auto height = [this](double metres) {
    return lengthText(Length::metres(metres), document_.yard().settings.units);
  };
  const QString end = endWords(value);
  switch (value.quantity) {
    case TreeQuantity::Height:
      return tr("%1: height %2, now %3%4").arg(name, height(value.to), height(value.from), end);
    case TreeQuantity::OpennessLeaf:
      return tr("%1: light in leaf %2, now %3%4")
          .arg(name, shareText(value.to), shareText(value.from), end);
    case TreeQuantity::OpennessBare:
      return tr("%1: light when bare %2, now %3%4")
          .arg(name, shareText(value.to), shareText(value.from), end);
  }
  return {};
}

void SurveyView::showOffer() {
  const auto& offer = survey_.offer();
  const bool writable = !document_.isReadOnly();
  const bool asked = look_->hasFocus();
  look_->setText(survey_.looking() ? tr("Looking…") : tr("Look for trees that fit"));
  offer_->setVisible(offer.has_value());
  const bool some = offer && !offer->proposal.empty();
  apply_->setVisible(some && writable);
  dismiss_->setVisible(offer.has_value());
  dismiss_->setText(some ? tr("Leave them") : tr("Close"));
  if (offer && asked) dismiss_->setFocus();
  look_->setVisible(!offer);
  if (!offer) return;
  QStringList lines{QString::fromStdString(offer->text)};
  for (const FittedValue& value : offer->values) lines << wordsOf(value);
  offer_->setText(lines.join(QLatin1Char('\n')));
  bringIntoView(dismiss_);
}

}  // namespace tussock
