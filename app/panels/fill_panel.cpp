// SPDX-License-Identifier: MIT
#include "app/panels/fill_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/arrangements_view.h"
#include "app/panels/buttons.h"
#include "app/panels/field_text.h"
#include "app/panels/figures_view.h"
#include "app/panels/plant_list_view.h"
#include "app/panels/score_view.h"
#include "app/panels/scrolled.h"
#include "app/panels/species_marks.h"
#include "core/checks/checked_fill.h"
#include "core/edit/draft.h"
#include "core/planting/arrangements.h"
#include "core/planting/published_figures.h"

namespace tussock {

namespace {

QLabel* heading(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setProperty("look", QStringLiteral("strong"));
  return label;
}

// What others have written of such figures; nobody wrote of this very bed.
QString publishedText(const std::vector<PublishedFigure>& figures) {
  QString words = QStringLiteral("<b>%1</b>").arg(FillPanel::tr("Beside published figures"));
  for (const PublishedFigure& figure : figures) {
    const QString line =
        QStringLiteral("%1: %2 (%3)")
            .arg(text(figure.title), text(besidePublished(figure)), text(figure.source));
    words += QStringLiteral("<p style=\"margin-top:%1px; margin-bottom:0\">%2</p>")
                 .arg(kSpace1)
                 .arg(line.toHtmlEscaped());
  }
  return words;
}

}  // namespace

FillPanel::FillPanel(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent)
    : QWidget(parent), document_(document), filling_(filling), bed_(bed) {
  setObjectName(QStringLiteral("fill-panel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, kSpace2, 0, 0);
  column->setSpacing(kSpace2);
  addList(column);
  figures_ = new FiguresView(document_, bed_, FiguresView::Flow::Down, this);
  column->addWidget(figures_);
  addResults(column);
  refresh();
}

const Bed* FillPanel::bed() const {
  return document_.yard().beds.find(bed_);
}

void FillPanel::addList(QVBoxLayout* column) {
  auto* head = new QHBoxLayout;
  head->addWidget(heading(tr("Plant list"), this), 1);
  propose_ = linkButton(
      QStringLiteral("plant-list-propose"), tr("Propose one"),
      tr("A list from the plant facts for this bed's sun, moisture, zone and state"), this);
  connect(propose_, &QPushButton::clicked, this, &FillPanel::propose);
  QPushButton* beside =
      linkButton(QStringLiteral("plant-list-beside"), tr("Side by side"),
                 tr("The list and its figures beside each other, along the bench"), this);
  connect(beside, &QPushButton::clicked, this, &FillPanel::listWanted);
  head->addWidget(propose_);
  head->addWidget(beside);
  column->addLayout(head);
  list_ = new PlantListView(document_, bed_, this);
  column->addWidget(list_);
}

void FillPanel::addResults(QVBoxLayout* column) {
  scoreHead_ = linkButton(QStringLiteral("fill-score-head"), QString(),
                          tr("How well the bed keeps each rule of planting"), this);
  scoreHead_->setCheckable(true);
  connect(scoreHead_, &QPushButton::toggled, this, [this] {
    showScore();
    emit scoreToggled();
  });
  column->addWidget(scoreHead_);
  score_ = new ScoreView(this);
  column->addWidget(score_);
  published_ = new QLabel(this);
  published_->setObjectName(QStringLiteral("fill-published"));
  published_->setProperty("look", QStringLiteral("note"));
  published_->setWordWrap(true);
  published_->setTextFormat(Qt::RichText);  // so that each figure stands apart
  column->addWidget(published_);
  column->addWidget(makeArrangementsHead());
  arrangements_ = new ArrangementsView(document_, filling_, bed_, this);
  column->addWidget(arrangements_);
}

QWidget* FillPanel::makeArrangementsHead() {
  arrangementsHead_ = new QWidget(this);
  auto* head = new QHBoxLayout(arrangementsHead_);
  head->setContentsMargins(0, 0, 0, 0);
  head->addWidget(heading(tr("Arrangements"), arrangementsHead_), 1);
  compare_ = linkButton(
      QStringLiteral("arrangements-compare"), tr("Side by side"),
      tr("Two arrangements large beside each other, with the rules that each keeps better"),
      arrangementsHead_);
  connect(compare_, &QPushButton::clicked, this, &FillPanel::compareWanted);
  head->addWidget(compare_);
  return arrangementsHead_;
}

void FillPanel::refresh() {
  list_->refresh();
  figures_->refresh();
  arrangements_->refresh();
  arrangementsHead_->setVisible(!arrangements_->isHidden());
  compare_->setVisible(!arrangementsOf(document_.yard(), bed_).empty());
  propose_->setEnabled(!document_.isReadOnly());
  showScore();
}

void FillPanel::propose() {
  const Bed* found = bed();
  if (!found) return;
  const auto sun = document_.sunMap();
  Bed changed = *found;
  changed.plantList =
      proposeList(document_.yard(), document_.facts(), sun.get(), bed_, filling_.seedOf(bed_),
                  changed.wildness, fillLimits(document_.yard().settings));
  if (changed.plantList.empty())
    return list_->say(
        tr("No species of the plant facts suits this bed's sun, moisture, zone and "
           "state. Check what is said of the bed, or add species by name."));
  Draft draft(document_.yard());
  draft.put(std::move(changed));
  document_.commit(draft.finish("Propose a plant list"));
}

void FillPanel::openScore() {
  scoreHead_->setChecked(true);
  if (score_->isHidden()) return;
  bringIntoView(score_);
  bringIntoView(scoreHead_);  // the first lines, where not all of it has room
}

void FillPanel::keep() {
  arrangements_->keep();
}

bool FillPanel::scoreOpen() const {
  return !score_->isHidden();
}

// The score is worked out only while it is looked at.
void FillPanel::showScore() {
  const Bed* found = bed();
  const bool planted = found && !driftsIn(document_.yard(), bed_).empty();
  const bool open = planted && scoreHead_->isChecked();
  scoreHead_->setVisible(planted);
  score_->setVisible(open);
  published_->setVisible(open);
  scoreHead_->setText(open ? tr("Hide the score") : tr("Score, rule by rule"));
  if (!open) return;
  const auto sun = document_.sunMap();
  score_->show(scoreBed(document_.yard(), document_.facts(), sun.get(), bed_, found->wildness,
                        fillLimits(document_.yard().settings)));
  published_->setText(publishedText(publishedFigures(document_.yard(), document_.facts(), bed_)));
  scoreHead_->setText(tr("Score %1 at %2 · hide")
                          .arg(shareText(score_->score().total), mannerText(found->wildness)));
}

}  // namespace tussock
