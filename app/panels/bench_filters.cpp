// SPDX-License-Identifier: MIT
#include "app/panels/bench_filters.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/bench_more.h"
#include "app/panels/filter_chips.h"
#include "app/panels/flow_layout.h"

namespace tussock {

BenchFilters::BenchFilters(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace2);
  more_ = new BenchMore(this);
  column->addWidget(makeFirstRow());
  column->addWidget(more_);
  more_->hide();
  connect(more_, &BenchMore::changed, this, &BenchFilters::changed);
  connect(more_, &BenchMore::deerSaid, this, &BenchFilters::deerSaid);
}

QWidget* BenchFilters::makeFirstRow() {
  auto* bar = new QWidget(this);
  auto* line = new QHBoxLayout(bar);
  line->setContentsMargins(kSpace4, 0, kSpace4, 0);
  line->setSpacing(kSpace3);
  makeSearch(bar);
  QPushButton* more = makeChip(bar, "chip-more", tr("More…"));
  more->setToolTip(tr("Order, layers, heights, colours and what lives on a plant"));
  connect(more, &QPushButton::toggled, more_, &QWidget::setVisible);
  count_ = new QLabel(bar);
  count_->setObjectName(QStringLiteral("bench-count"));
  count_->setProperty("look", QStringLiteral("quiet"));
  count_->setContentsMargins(0, kSpace1, 0, 0);
  line->addWidget(search_, 0, Qt::AlignTop);
  line->addWidget(makeChips(bar), 1);
  line->addWidget(more, 0, Qt::AlignTop);
  line->addWidget(count_, 0, Qt::AlignTop);
  return bar;
}

void BenchFilters::makeSearch(QWidget* bar) {
  search_ = new QLineEdit(bar);
  search_->setObjectName(QStringLiteral("bench-search"));
  search_->setPlaceholderText(tr("Search: tall, dry, fall"));
  search_->setAccessibleName(tr("Search species"));
  search_->setClearButtonEnabled(true);
  search_->addAction(icon(QStringLiteral("search")), QLineEdit::LeadingPosition);
  search_->setFixedWidth(184);
  connect(search_, &QLineEdit::textChanged, this, &BenchFilters::changed);
}

QWidget* BenchFilters::makeChips(QWidget* bar) {
  auto* chips = new QWidget(bar);
  chips->setLayout(new FlowLayout(kSpace1 + 2, kSpace1 + 2));
  fits_ = makeChip(chips, "chip-fits", tr("Fits here"));
  chips->layout()->addWidget(fits_);
  connect(fits_, &QPushButton::clicked, this, [this](bool on) {
    fitsWanted_ = on;
    emit changed();
  });
  const auto told = [this] { emit changed(); };
  addChips<SunNeed>(chips, filter_.sun,
                    {{SunNeed::Full, "chip-full", tr("Sun")},
                     {SunNeed::Part, "chip-part", tr("Part")},
                     {SunNeed::Shade, "chip-shade", tr("Shade")}},
                    told);
  addChips<Moisture>(chips, filter_.moisture,
                     {{Moisture::Dry, "chip-dry", tr("Dry")},
                      {Moisture::Medium, "chip-medium", tr("Medium")},
                      {Moisture::Moist, "chip-moist", tr("Moist")},
                      {Moisture::Wet, "chip-wet", tr("Wet")}},
                     told);
  addChips<Habit>(chips, filter_.habits,
                  {{Habit::Forb, "chip-forb", tr("Forbs")},
                   {Habit::Grass, "chip-grass", tr("Grasses")},
                   {Habit::Sedge, "chip-sedge", tr("Sedges")},
                   {Habit::Fern, "chip-fern", tr("Ferns")},
                   {Habit::Shrub, "chip-shrub", tr("Shrubs")},
                   {Habit::Vine, "chip-vine", tr("Vines")},
                   {Habit::Bulb, "chip-bulb", tr("Bulbs")}},
                  told);
  chips->findChild<QPushButton*>(QStringLiteral("chip-sedge"))->setToolTip(tr("Sedges and rushes"));
  chips->findChild<QPushButton*>(QStringLiteral("chip-bulb"))
      ->setToolTip(tr("Bulbs, and spring ephemerals that are gone by summer"));
  return chips;
}

Choice BenchFilters::choice() const {
  Choice choice;
  choice.filter = filter_;
  choice.filter.words = search_->text().toStdString();
  more_->addTo(choice);
  if (place_ != PlaceKind::None && more_->wantsLeftOut())
    choice.of = ChoiceOf::LeftOut;
  else if (place_ != PlaceKind::None && fitsWanted_)
    choice.of = ChoiceOf::Suiting;
  return choice;
}

void BenchFilters::offer(const Catalogue& facts, const std::string& state, UnitSystem units) {
  more_->offer(facts, state, units);
}

void BenchFilters::showDeer(DeerAbout about, bool writable) {
  more_->showDeer(about, writable);
}

void BenchFilters::setPlace(PlaceKind kind) {
  place_ = kind;
  const bool any = kind != PlaceKind::None;
  fits_->setEnabled(any);
  fits_->setChecked(any && fitsWanted_);
  fits_->setToolTip(
      any ? tr("Only what suits the sun, moisture, soil, state, zone, height limit and deer")
          : tr("Select a bed to see what suits it"));
  more_->setPlace(any);
}

void BenchFilters::setCount(const QString& words) {
  count_->setText(words);
}

}  // namespace tussock
