// SPDX-License-Identifier: MIT
#include "app/panels/fill_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/arrangements_view.h"
#include "app/panels/field_form.h"
#include "app/panels/field_text.h"
#include "app/panels/figures_view.h"
#include "app/panels/flow_layout.h"
#include "app/panels/plant_list_view.h"
#include "app/panels/score_view.h"
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

QPushButton* button(const QString& name, const QString& words, const QString& says,
                    QWidget* parent) {
  auto* made = new QPushButton(words, parent);
  made->setObjectName(name);
  made->setToolTip(says);
  return made;
}

// What others have written of such figures; nobody wrote of this very bed.
QString publishedText(const std::vector<PublishedFigure>& figures) {
  QStringList lines{FillPanel::tr("Beside published figures")};
  const auto number = [](double value) { return QLocale().toString(value, 'f', 1); };
  for (const PublishedFigure& figure : figures) {
    const QString asked =
        figure.high > figure.low
            ? FillPanel::tr("%1 to %2").arg(number(figure.low), number(figure.high))
            : FillPanel::tr("%1 and more").arg(number(figure.low));
    lines << FillPanel::tr("%1: %2. Published: %3 (%4)")
                 .arg(text(figure.title), number(figure.measured), asked, text(figure.source));
  }
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

FillPanel::FillPanel(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent)
    : QWidget(parent), document_(document), filling_(filling), bed_(bed) {
  setObjectName(QStringLiteral("fill-panel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, kSpace2, 0, 0);
  column->setSpacing(kSpace2);
  addList(column);
  addManner(column);
  addButtons(column);
  addNotes(column);
  figures_ = new FiguresView(document_, bed_, FiguresView::Flow::Down, this);
  column->addWidget(figures_);
  addResults(column);
  connect(&filling_, &Filling::started, this, &FillPanel::showRunning);
  connect(&filling_, &Filling::ended, this, [this] { showRunning(), showNotes(); });
  connect(&filling_, &Filling::progressed, this, [this](double share) {
    if (filling_.bed() == bed_) progress_->setValue(qRound(share * 100.0));
  });
  refresh();
}

const Bed* FillPanel::bed() const {
  return document_.yard().beds.find(bed_);
}

void FillPanel::addList(QVBoxLayout* column) {
  auto* head = new QHBoxLayout;
  head->addWidget(heading(tr("Plant list"), this), 1);
  propose_ =
      button(QStringLiteral("plant-list-propose"), tr("Propose one"),
             tr("A list from the plant facts for this bed's sun, moisture, zone and state"), this);
  propose_->setProperty("look", QStringLiteral("link"));
  connect(propose_, &QPushButton::clicked, this, &FillPanel::propose);
  QPushButton* beside =
      button(QStringLiteral("plant-list-beside"), tr("Side by side"),
             tr("The list and its figures beside each other, along the bench"), this);
  beside->setProperty("look", QStringLiteral("link"));
  connect(beside, &QPushButton::clicked, this, &FillPanel::listWanted);
  head->addWidget(propose_);
  head->addWidget(beside);
  column->addLayout(head);
  list_ = new PlantListView(document_, bed_, this);
  column->addWidget(list_);
}

void FillPanel::addManner(QVBoxLayout* column) {
  manner_ = new FieldForm(this);
  manner_->addSlider(
      QStringLiteral("bed-wildness"), tr("Formal to natural"),
      [this] { return bed() ? qRound(bed()->wildness * 100.0) : 50; },
      [this](int value) {
        if (!bed()) return;
        Bed changed = *bed();
        changed.wildness = value / 100.0;
        Draft draft(document_.yard());
        draft.put(std::move(changed));
        document_.commit(draft.finish("Change manner of planting"));
      });
  if (auto* slider = manner_->findChild<QSlider*>(QStringLiteral("bed-wildness")))
    slider->setToolTip(
        tr("Left: few species in large, even groups. Right: many, small and mixed."));
  column->addWidget(manner_);
}

void FillPanel::addButtons(QVBoxLayout* column) {
  buttons_ = new QWidget(this);
  auto* flow = new FlowLayout(kSpace2, kSpace2);
  buttons_->setLayout(flow);
  auto* whole = button(QStringLiteral("fill-bed"), tr("Fill bed"),
                       tr("Plants the whole bed. Locked drifts and what stands there stay."), this);
  whole->setProperty("look", QStringLiteral("primary"));
  connect(whole, &QPushButton::clicked, this, [this] { fill(FillWhat::WholeBed, Next::SameSeed); });
  auto* another = button(QStringLiteral("fill-another"), tr("Another arrangement"),
                         tr("The same plants, arranged otherwise"), this);
  connect(another, &QPushButton::clicked, this,
          [this] { fill(FillWhat::WholeBed, Next::NextSeed); });
  auto* gaps = button(QStringLiteral("fill-gaps"), tr("Fill the gaps"),
                      tr("Plants only where nothing stands"), this);
  connect(gaps, &QPushButton::clicked, this, [this] { fill(FillWhat::EmptyPart, Next::SameSeed); });
  for (QPushButton* each : {whole, another, gaps, speciesButton()}) flow->addWidget(each);
  column->addWidget(buttons_);
  running_ = new QWidget(this);
  auto* line = new QHBoxLayout(running_);
  line->setContentsMargins(0, 0, 0, 0);
  progress_ = new QProgressBar(running_);
  progress_->setObjectName(QStringLiteral("fill-progress"));
  progress_->setTextVisible(false);
  progress_->setFixedHeight(8);
  line->addWidget(progress_, 1);
  stop_ = button(QStringLiteral("fill-stop"), tr("Stop"), tr("Leaves the bed as it was"), running_);
  connect(stop_, &QPushButton::clicked, &filling_, &Filling::stop);
  line->addWidget(stop_);
  column->addWidget(running_);
}

// One species of those in the bed, planted anew; the others stay.
QPushButton* FillPanel::speciesButton() {
  species_ = button(QStringLiteral("fill-species"), tr("Refill one species"),
                    tr("Plants one species of the bed anew; the others stay where they are"), this);
  auto* menu = new QMenu(species_);
  species_->setMenu(menu);
  connect(menu, &QMenu::aboutToShow, this, [this, menu] {
    menu->clear();
    for (const auto& [shown, name] : speciesPlanted())
      menu->addAction(shown, this, [this, name = name] { refill(name); });
  });
  return species_;
}

// By the names shown; those whose drifts are all locked or stand there already cannot be refilled.
std::map<QString, std::string> FillPanel::speciesPlanted() const {
  std::map<QString, std::string> planted;
  for (const Drift* drift : driftsIn(document_.yard(), bed_)) {
    const Species* known = document_.facts().find(drift->species);
    if (known && isFree(*drift))
      planted.emplace(text(document_.facts().nameApart(*known)), drift->species);
  }
  return planted;
}

void FillPanel::refill(const std::string& species) {
  FillRequest request;
  request.bed = bed_;
  request.what = FillWhat::OneSpecies;
  request.species = species;
  request.seed = filling_.seedOf(bed_) + 1;  // the same would plant what stands there
  filling_.start(std::move(request));
}

// Right under the buttons: who pressed one looks there.
void FillPanel::addNotes(QVBoxLayout* column) {
  notes_ = new QLabel(this);
  notes_->setObjectName(QStringLiteral("fill-notes"));
  notes_->setProperty("look", QStringLiteral("note"));
  notes_->setWordWrap(true);
  column->addWidget(notes_);
}

void FillPanel::addResults(QVBoxLayout* column) {
  scoreHead_ = button(QStringLiteral("fill-score-head"), QString(),
                      tr("How well the bed keeps each rule of planting"), this);
  scoreHead_->setProperty("look", QStringLiteral("link"));
  scoreHead_->setCheckable(true);
  connect(scoreHead_, &QPushButton::toggled, this, &FillPanel::showScore);
  column->addWidget(scoreHead_);
  score_ = new ScoreView(this);
  column->addWidget(score_);
  published_ = new QLabel(this);
  published_->setObjectName(QStringLiteral("fill-published"));
  published_->setProperty("look", QStringLiteral("note"));
  published_->setWordWrap(true);
  published_->setTextFormat(Qt::PlainText);
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
  compare_ = button(QStringLiteral("arrangements-compare"), tr("Side by side"),
                    tr("Two arrangements large beside each other, with the rules that each keeps "
                       "better"),
                    arrangementsHead_);
  compare_->setProperty("look", QStringLiteral("link"));
  connect(compare_, &QPushButton::clicked, this, &FillPanel::compareWanted);
  head->addWidget(compare_);
  return arrangementsHead_;
}

void FillPanel::refresh() {
  list_->refresh();
  figures_->refresh();
  manner_->refresh();
  arrangements_->refresh();
  arrangementsHead_->setVisible(!arrangements_->isHidden());
  compare_->setVisible(!arrangementsOf(document_.yard(), bed_).empty());
  showRunning();
  showNotes();
  showScore();
}

void FillPanel::fill(FillWhat what, Next next) {
  FillRequest request;
  request.bed = bed_;
  request.what = what;
  request.seed = filling_.seedOf(bed_) + (next == Next::NextSeed ? 1 : 0);
  const Bed* asked = bed();
  if (next == Next::NextSeed && asked && asked->plantList.empty())
    request.plants = filling_.proposedFor(bed_);  // or other plants would be proposed
  filling_.start(std::move(request));
}

void FillPanel::propose() {
  const Bed* found = bed();
  if (!found) return;
  const auto sun = document_.sunMap();
  Bed changed = *found;
  changed.plantList =
      proposeList(document_.yard(), document_.facts(), sun.get(), bed_, filling_.seedOf(bed_),
                  changed.wildness, fillLimits(document_.yard().settings));
  if (changed.plantList.empty()) {
    notes_->setText(
        tr("No species of the plant facts suits this bed's sun, moisture, zone and "
           "state. Check what is said of the bed, or add species by name."));
    return notes_->show();
  }
  Draft draft(document_.yard());
  draft.put(std::move(changed));
  document_.commit(draft.finish("Propose a plant list"));
}

void FillPanel::showRunning() {
  const bool here = filling_.bed() == bed_;
  swapButtons(here);
  buttons_->setEnabled(!document_.isReadOnly());
  species_->setEnabled(!speciesPlanted().empty());
  propose_->setEnabled(!document_.isReadOnly());
  if (here) progress_->setValue(0);
}

// What is hidden loses the focus: it goes to Stop, and back to the button pressed.
void FillPanel::swapButtons(bool running) {
  QWidget* focused = focusWidget();
  if (running) {
    const bool pressed = focused != nullptr && buttons_->isAncestorOf(focused);
    running_->show();
    if (pressed) pressed_ = focused, stop_->setFocus();
    buttons_->hide();
    return;
  }
  buttons_->show();
  if (pressed_ != nullptr && focused == stop_) pressed_->setFocus();
  pressed_.clear();
  running_->hide();
}

void FillPanel::showNotes() {
  QStringList lines;
  for (const std::string& note : filling_.notesOf(bed_)) lines << QString::fromStdString(note);
  notes_->setText(lines.join(QLatin1Char('\n')));
  notes_->setVisible(!lines.isEmpty());
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
  scoreHead_->setText(tr("Score %1 · hide").arg(shareText(score_->score().total)));
}

}  // namespace tussock
