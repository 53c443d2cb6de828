// SPDX-License-Identifier: MIT
#include "app/panels/figures_view.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/botanical.h"
#include "app/look/theme.h"
#include "app/panels/bloom_chart.h"
#include "app/panels/field_form.h"
#include "app/panels/figures_words.h"
#include "app/panels/flow_layout.h"
#include "app/panels/height_profile.h"
#include "app/panels/plant_list_edit.h"
#include "app/panels/reason_words.h"
#include "app/panels/scrolled.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

constexpr std::size_t kFigureShares = 4, kPairs = 3;

QLabel* strong(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setProperty("look", QStringLiteral("strong"));
  return label;
}

}  // namespace

FiguresView::FiguresView(Document& document, Id<Bed> bed, Flow flow, QWidget* parent)
    : QWidget(parent), document_(document), bed_(bed) {
  setObjectName(QStringLiteral("figures"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, flow == Flow::Down ? kSpace1 : 0, 0, 0);
  column->setSpacing(kSpace2);
  addHead(column);
  makeParts();
  flow == Flow::Down ? layDown() : layAcross();
  column->addWidget(body_, 1);
  addFacts();
  refresh();
}

void FiguresView::makeParts() {
  body_ = new QWidget(this);
  bloom_ = new BloomChart(body_);
  heights_ = new HeightProfile(body_);
  facts_ = new FieldForm(body_);
  missing_ = new QWidget(body_);
  missingRows_ = new QVBoxLayout(missing_);
  missingRows_->setContentsMargins(0, 0, 0, 0);
  missingRows_->setSpacing(kSpace1);
}

void FiguresView::layDown() {
  auto* inner = new QVBoxLayout(body_);
  inner->setContentsMargins(0, 0, 0, 0);
  inner->setSpacing(kSpace3);
  for (QWidget* part : {static_cast<QWidget*>(bloom_), static_cast<QWidget*>(heights_),
                        static_cast<QWidget*>(facts_), missing_})
    inner->addWidget(part);
}

void FiguresView::layAcross() {
  auto* inner = new QHBoxLayout(body_);
  inner->setContentsMargins(0, 0, 0, 0);
  inner->setSpacing(kSpace5);
  const auto lay = [inner](std::initializer_list<QWidget*> parts, const char* name, int share) {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, kSpace2, 0);  // clear of the bar that scrolls
    column->setSpacing(kSpace3);
    for (QWidget* part : parts) column->addWidget(part);
    column->addStretch(1);
    inner->addWidget(scrolled(box, QLatin1String(name)), share);
  };
  // Weeks need width to be read, and closer rows rather than a bar to scroll.
  bloom_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
  lay({bloom_}, "figures-pictures", 3);
  lay({missing_, heights_, facts_}, "figures-facts", 2);
}

void FiguresView::addHead(QVBoxLayout* column) {
  head_ = new QWidget(this);
  auto* line = new QHBoxLayout(head_);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kSpace1);
  line->addWidget(strong(tr("Together"), head_), 1);
  which_ = new QButtonGroup(this);
  const auto chip = [&](const char* name, const QString& words, MixOf what) {
    auto* made = new QPushButton(words, head_);
    made->setObjectName(QLatin1String(name));
    made->setProperty("look", QStringLiteral("chip"));
    made->setCheckable(true);
    which_->addButton(made, int(what));
    line->addWidget(made);
  };
  chip("figures-list", tr("As listed"), MixOf::List);
  chip("figures-planted", tr("As planted"), MixOf::Planted);
  connect(which_, &QButtonGroup::idClicked, this, [this](int what) {
    chosen_ = MixOf(what);
    refresh();
  });
  column->addWidget(head_);
}

void FiguresView::addFacts() {
  const PlantFigures& f = mix_.figures;
  const auto fact = [this](const char* name, const QString& label, FieldForm::Read read) {
    return facts_->addFact(QLatin1String(name), label, std::move(read));
  };
  fact("figures-diversity", tr("Variety"), [&f] { return diversityWords(f.diversity); })
      ->setToolTip(tr("Shannon: −Σ p ln p. Simpson: 1 − Σ p². Evenness (Pielou): Shannon over the "
                      "logarithm of the number of species. p are shares of the plants."));
  fact("figures-genera", tr("Genera"), [&f] { return sharesWords(f.byGenus, kFigureShares); });
  fact("figures-families", tr("Families"), [&f] { return sharesWords(f.byFamily, kFigureShares); });
  fact("figures-layers", tr("Layers"), [&f] { return sharesWords(f.byLayer, kFigureShares); });
  fact("figures-heights", tr("Heights"), [&f] { return bandsWords(f); });
  fact("figures-grasses", tr("Grasses"),
       [&f] { return tr("%1 grasses and sedges").arg(percentWords(f.grassShare)); });
  fact("figures-hosts", tr("Caterpillars"), [this, &f] { return hostWords(f, document_.facts()); });
  fact("figures-nectar", tr("Nectar"), [this, &f] { return nectarWords(f, mix_.season); });
  fact("figures-colours", tr("Colours"),
       [this] { return colourWords(mix_.colours, document_.facts(), kPairs); });
}

const Bed* FiguresView::bed() const {
  return document_.yard().beds.find(bed_);
}

MixOf FiguresView::shownMix(const Bed& bed) const {
  const bool planted = !driftsIn(document_.yard(), bed.id).empty();
  const bool listed = !bed.plantList.empty();
  if (planted != listed) return planted ? MixOf::Planted : MixOf::List;
  return chosen_.value_or(MixOf::List);
}

void FiguresView::refresh() {
  const Bed* found = bed();
  if (!found) return;
  const auto sun = document_.sunMap();
  const MixOf what = shownMix(*found);
  mix_ = mixOf(document_.yard(), document_.facts(), *found, what,
               sun ? sun->meanHours(found->outline) : std::nullopt);
  setVisible(!mix_.figures.empty());
  const bool both = !found->plantList.empty() && !driftsIn(document_.yard(), bed_).empty();
  for (QAbstractButton* chip : which_->buttons()) chip->setVisible(both);
  which_->button(int(what))->setChecked(true);
  bloom_->show(mix_.figures, mix_.season, document_.facts().hemisphere());
  heights_->show(mix_.figures.heights, document_.yard().settings.units);
  facts_->refresh();
  showMissing();
}

void FiguresView::showMissing() {
  while (QLayoutItem* item = missingRows_->takeAt(0)) {  // a button of these may have been pressed
    if (QWidget* widget = item->widget()) widget->hide(), widget->deleteLater();
    delete item;
  }
  missing_->setVisible(!mix_.remedies.empty());
  if (mix_.remedies.empty()) return;
  missingRows_->addWidget(strong(tr("Missing"), missing_));
  for (const Remedy& remedy : mix_.remedies) addRemedy(remedy);
}

void FiguresView::addRemedy(const Remedy& remedy) {
  auto* words = new QLabel(text(remedy.missing.text), missing_);
  words->setObjectName(QStringLiteral("figures-missing"));
  words->setWordWrap(true);
  missingRows_->addWidget(words);
  auto* row = new QWidget(missing_);
  auto* flow = new FlowLayout(kSpace1, kSpace1);
  row->setLayout(flow);
  for (const Ranked& one : remedy.species) {
    const Species& species = *one.species;
    auto* add = new QPushButton(tr("Add %1").arg(text(document_.facts().nameApart(species))), row);
    add->setObjectName(QStringLiteral("figures-add"));
    add->setProperty("look", QStringLiteral("chip"));
    add->setEnabled(!document_.isReadOnly());
    add->setToolTip(tr("%1 to the plant list. %2.")
                        .arg(text(species.botanicalName), reasonWords(toldReasons(one))));
    connect(add, &QPushButton::clicked, this,
            [this, name = species.botanicalName] { addToPlantList(document_, bed_, name); });
    flow->addWidget(add);
  }
  row->setVisible(!remedy.species.empty());
  if (remedy.species.empty())
    words->setText(words->text() + ' ' + tr("No species of the plant facts would fill that here."));
  row->setContentsMargins(0, 0, 0, kSpace2);
  missingRows_->addWidget(row);
}

}  // namespace tussock
