// SPDX-License-Identifier: MIT
#include "app/panels/fill_bar.h"

#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QProgressBar>
#include <QSlider>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/buttons.h"
#include "app/panels/field_form.h"
#include "app/panels/field_text.h"
#include "app/panels/fill_stops.h"
#include "app/panels/flow_layout.h"
#include "app/panels/species_marks.h"
#include "core/edit/draft.h"
#include "core/planting/arrangements.h"
#include "core/planting/planted_list.h"

namespace tussock {

FillBar::FillBar(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent)
    : QWidget(parent), document_(document), filling_(filling), bed_(bed) {
  setObjectName(QStringLiteral("fill-bar"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(kSpace4 + kSpace1, kSpace2, kSpace4, kSpace2);
  column->setSpacing(kSpace2);
  addManner(column);
  addButtons(column);
  addNotes(column);
  addAfter(column);
  connect(&filling_, &Filling::started, this, &FillBar::showRunning);
  connect(&filling_, &Filling::ended, this, [this] {
    more_->setChecked(false);
    refresh();
  });
  connect(&filling_, &Filling::notesForgotten, this, &FillBar::showNotes);
  connect(&filling_, &Filling::progressed, this, [this](double share) {
    if (filling_.bed() == bed_) progress_->setValue(qRound(share * 100.0));
  });
  refresh();
}

const Bed* FillBar::bed() const {
  return document_.yard().beds.find(bed_);
}

void FillBar::addManner(QVBoxLayout* column) {
  manner_ = new FieldForm(this);
  slider_ = manner_->addSlider(
      QStringLiteral("bed-wildness"), tr("Formal to natural"),
      [this] { return bed() ? qRound(bed()->wildness * 100.0) : 50; },
      [this](int value) {
        if (!bed()) return;
        Bed changed = *bed();
        changed.wildness = value / 100.0;
        Draft draft(document_.yard());
        draft.put(std::move(changed));
        document_.commitStep(draft.finish("Change manner of planting"));
      });
  column->addWidget(manner_);
}

void FillBar::addButtons(QVBoxLayout* column) {
  pages_ = new QStackedWidget(this);
  buttons_ = makeButtons();
  running_ = makeRunning();
  pages_->addWidget(buttons_);
  pages_->addWidget(running_);
  column->addWidget(pages_);
}

QWidget* FillBar::makeButtons() {
  auto* box = new QWidget(this);
  auto* flow = new FlowLayout(kSpace2, kSpace2);
  box->setLayout(flow);
  auto* whole =
      pushButton(QStringLiteral("fill-bed"), tr("Fill bed"),
                 tr("Plants the whole bed. Locked drifts and what stands there stay."), box);
  whole->setProperty("look", QStringLiteral("primary"));
  connect(whole, &QPushButton::clicked, this, [this] { fill(FillWhat::WholeBed, Next::SameSeed); });
  auto* another = pushButton(QStringLiteral("fill-another"), tr("Another arrangement"),
                             tr("The same plants, arranged otherwise"), box);
  connect(another, &QPushButton::clicked, this,
          [this] { fill(FillWhat::WholeBed, Next::NextSeed); });
  auto* gaps = pushButton(QStringLiteral("fill-gaps"), tr("Fill the gaps"),
                          tr("Plants only where nothing stands"), box);
  connect(gaps, &QPushButton::clicked, this, [this] { fill(FillWhat::EmptyPart, Next::SameSeed); });
  for (QPushButton* each : {whole, another, gaps, speciesButton()}) flow->addWidget(each);
  return box;
}

// One species of those in the bed, planted anew; the others stay.
QPushButton* FillBar::speciesButton() {
  species_ =
      pushButton(QStringLiteral("fill-species"), tr("Refill one species"),
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

QWidget* FillBar::makeRunning() {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, kSpace2, 0, 0);
  column->setSpacing(kSpace3);
  progress_ = new QProgressBar(box);
  progress_->setObjectName(QStringLiteral("fill-progress"));
  progress_->setTextVisible(false);
  progress_->setFixedHeight(8);
  column->addWidget(progress_);
  stops_ = new FillStops(filling_, QStringLiteral("fill-stop"), box);
  column->addWidget(stops_);
  column->addStretch(1);
  return box;
}

// By the names shown; those whose drifts are all locked or stand there already cannot be refilled.
std::map<QString, std::string> FillBar::speciesPlanted() const {
  std::map<QString, std::string> planted;
  for (const Drift* drift : driftsIn(document_.yard(), bed_)) {
    const Species* known = document_.facts().find(drift->species);
    if (known && isFree(*drift))
      planted.emplace(text(document_.facts().nameApart(*known)), drift->species);
  }
  return planted;
}

void FillBar::refill(const std::string& species) {
  FillRequest request;
  request.bed = bed_;
  request.what = FillWhat::OneSpecies;
  request.species = species;
  request.seed = filling_.seedOf(bed_) + 1;  // the same would plant what stands there
  filling_.start(std::move(request));
}

void FillBar::fill(FillWhat what, Next next) {
  FillRequest request;
  request.bed = bed_;
  request.what = what;
  request.seed = filling_.seedOf(bed_) + (next == Next::NextSeed ? 1 : 0);
  if (next == Next::NextSeed) request.plants = toArrange();
  filling_.start(std::move(request));
}

// With another seed other plants would be proposed, or chosen from a list too long for the bed.
std::vector<ListedSpecies> FillBar::toArrange() const {
  const Bed* asked = bed();
  if (!asked) return {};
  const auto& list = asked->plantList.empty() ? filling_.proposedFor(bed_) : asked->plantList;
  const auto planted = plantedList(document_.yard(), bed_, isFree, list);
  return planted.empty() ? list : planted;
}

// The first alone until more are asked for: the bed's facts above keep their room.
void FillBar::addNotes(QVBoxLayout* column) {
  notes_ = new QLabel(this);
  notes_->setObjectName(QStringLiteral("fill-notes"));
  notes_->setProperty("look", QStringLiteral("note"));
  notes_->setTextFormat(Qt::PlainText);
  notes_->setWordWrap(true);
  column->addWidget(notes_);
}

void FillBar::addAfter(QVBoxLayout* column) {
  after_ = new QWidget(this);
  auto* flow = new FlowLayout(kSpace2, 0);
  after_->setLayout(flow);
  more_ = linkButton(QStringLiteral("fill-notes-more"), QString(),
                     tr("All that the filling had to say"), after_);
  more_->setCheckable(true);
  connect(more_, &QPushButton::toggled, this, &FillBar::showNotes);
  QPushButton* score = linkButton(QStringLiteral("fill-score-open"), tr("Score"),
                                  tr("How well the bed keeps each rule of planting"), after_);
  connect(score, &QPushButton::clicked, this, &FillBar::scoreWanted);
  keep_ =
      linkButton(QStringLiteral("fill-keep"), tr("Keep"),
                 tr("Keeps this arrangement under a name, to come back to it or compare"), after_);
  connect(keep_, &QPushButton::clicked, this, &FillBar::keepWanted);
  compare_ = linkButton(QStringLiteral("fill-compare"), tr("Compare"),
                        tr("Two arrangements large beside each other, along the bench"), after_);
  connect(compare_, &QPushButton::clicked, this, &FillBar::compareWanted);
  for (QPushButton* each : {keep_, compare_, score, more_}) flow->addWidget(each);
  column->addWidget(after_);
}

void FillBar::refresh() {
  manner_->setEnabled(!document_.isReadOnly());
  manner_->refresh();
  slider_->setToolTip(
      tr("%1. Left: few species in large, even groups. Right: many, small and mixed.")
          .arg(mannerText(bed() ? bed()->wildness : 0.5)));
  const Yard& yard = document_.yard();
  keep_->setEnabled(!document_.isReadOnly());
  compare_->setVisible(!arrangementsOf(yard, bed_).empty());
  after_->setVisible(!driftsIn(yard, bed_).empty());
  showRunning();
  showNotes();
}

void FillBar::showRunning() {
  const bool here = filling_.bed() == bed_;
  swapButtons(here);
  buttons_->setEnabled(!document_.isReadOnly());
  species_->setEnabled(!speciesPlanted().empty());
  if (here) progress_->setValue(qRound(filling_.share() * 100.0));
}

// What is hidden loses the focus: it goes to what leaves the bed as it was, and back to the button
// pressed. The bar stays as high as it was, so that nothing moves while the bed is filled.
void FillBar::swapButtons(bool running) {
  QWidget* focused = focusWidget();
  if (running) {
    const bool pressed = focused != nullptr && buttons_->isAncestorOf(focused);
    if (isVisible()) pages_->setMinimumHeight(pages_->height());
    pages_->setCurrentWidget(running_);
    if (pressed) pressed_ = focused, stops_->leave()->setFocus();
    return;
  }
  pages_->setMinimumHeight(0);
  pages_->setCurrentWidget(buttons_);
  if (pressed_ != nullptr && stops_->isAncestorOf(focused)) pressed_->setFocus();
  pressed_.clear();
}

void FillBar::showNotes() {
  const std::vector<std::string>& notes = filling_.notesOf(bed_);
  const bool all = more_->isChecked();
  QStringList lines;
  for (const std::string& note : notes)
    if (all || lines.isEmpty()) lines << QString::fromStdString(note);
  notes_->setText(lines.join(QLatin1Char('\n')));
  notes_->setVisible(!lines.isEmpty());
  more_->setVisible(notes.size() > 1);
  const std::size_t more = notes.empty() ? 0 : notes.size() - 1;
  more_->setText(all         ? tr("Fewer notes")
                 : more == 1 ? tr("1 more note")
                             : tr("%1 more notes").arg(more));
}

void FillBar::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(QRect(0, 0, width(), 1), currentTheme().line);
}

}  // namespace tussock
