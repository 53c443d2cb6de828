// SPDX-License-Identifier: MIT
#include "app/panels/bench_filters.h"

#include <array>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/flow_layout.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

// Greatest heights to choose from, in feet, as catalogues give them.
constexpr std::array<int, 5> kHeights{1, 2, 3, 4, 6};

QFrame* gap(QWidget* parent) {
  auto* frame = new QFrame(parent);
  frame->setFixedSize(kSpace2, 1);
  return frame;
}

std::set<std::string> one(const QComboBox& combo) {
  if (combo.currentIndex() <= 0) return {};
  return {combo.currentText().toStdString()};
}

}  // namespace

BenchFilters::BenchFilters(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kSpace2);
  makeFirstRow();
  makeSecondRow();
  second_->hide();
}

void BenchFilters::makeFirstRow() {
  auto* bar = new QWidget(this);
  auto* line = new QHBoxLayout(bar);
  line->setContentsMargins(kSpace4, 0, kSpace4, 0);
  line->setSpacing(kSpace3);
  search_ = new QLineEdit(bar);
  search_->setObjectName(QStringLiteral("bench-search"));
  search_->setPlaceholderText(tr("Search: tall, dry, fall"));
  search_->setAccessibleName(tr("Search species"));
  search_->setClearButtonEnabled(true);
  search_->addAction(icon(QStringLiteral("search")), QLineEdit::LeadingPosition);
  search_->setFixedWidth(184);
  connect(search_, &QLineEdit::textChanged, this, &BenchFilters::changed);
  auto* chips = new QWidget(bar);
  chips->setLayout(new FlowLayout(kSpace1 + 2, kSpace1 + 2));
  fits_ = makeChip(chips, "chip-fits", tr("Fits here"));
  chips->layout()->addWidget(fits_);
  connect(fits_, &QPushButton::clicked, this, [this](bool on) {
    fitsWanted_ = on;
    emit changed();
  });
  addChips<SunNeed>(chips, filter_.sun,
                    {{SunNeed::Full, "chip-full", tr("Sun")},
                     {SunNeed::Part, "chip-part", tr("Part")},
                     {SunNeed::Shade, "chip-shade", tr("Shade")}});
  addChips<Moisture>(chips, filter_.moisture,
                     {{Moisture::Dry, "chip-dry", tr("Dry")},
                      {Moisture::Medium, "chip-medium", tr("Medium")},
                      {Moisture::Moist, "chip-moist", tr("Moist")},
                      {Moisture::Wet, "chip-wet", tr("Wet")}});
  addChips<Habit>(chips, filter_.habits,
                  {{Habit::Forb, "chip-forb", tr("Forbs")},
                   {Habit::Grass, "chip-grass", tr("Grasses")},
                   {Habit::Sedge, "chip-sedge", tr("Sedges, rushes")},
                   {Habit::Fern, "chip-fern", tr("Ferns")},
                   {Habit::Shrub, "chip-shrub", tr("Shrubs")},
                   {Habit::Vine, "chip-vine", tr("Vines")}});
  more_ = makeChip(bar, "chip-more", tr("More…"));
  more_->setToolTip(tr("Order, layers, heights, colours and what lives on a plant"));
  connect(more_, &QPushButton::toggled, this, [this](bool on) { second_->setVisible(on); });
  count_ = new QLabel(bar);
  count_->setObjectName(QStringLiteral("bench-count"));
  count_->setProperty("look", QStringLiteral("quiet"));
  count_->setContentsMargins(0, kSpace1, 0, 0);
  line->addWidget(search_, 0, Qt::AlignTop);
  line->addWidget(chips, 1);
  line->addWidget(more_, 0, Qt::AlignTop);
  line->addWidget(count_, 0, Qt::AlignTop);
  layout()->addWidget(bar);
}

void BenchFilters::makeSecondRow() {
  second_ = new QWidget(this);
  second_->setObjectName(QStringLiteral("bench-more"));
  auto* row = new QWidget(second_);
  auto* flow = new FlowLayout(kSpace1 + 2, kSpace1 + 2);
  row->setLayout(flow);
  auto* inset = new QHBoxLayout(second_);
  inset->setContentsMargins(kSpace4, 0, kSpace4, 0);
  inset->addWidget(row);
  makeCombos(row);
  leftOut_ = makeChip(row, "chip-left-out", tr("Left out"));
  native_ = makeChip(row, "chip-native", tr("Recorded here"));
  flow->addWidget(leftOut_);
  flow->addWidget(native_);
  deer_ = makeChip(row, "chip-deer-about", tr("Deer about"));
  deer_->setToolTip(
      tr("Kept in the yard: what deer eat does not fit, what they leave fits better"));
  connect(deer_, &QPushButton::clicked, this,
          [this](bool about) { emit deerSaid(about ? DeerAbout::Yes : DeerAbout::No); });
  flow->addWidget(deer_);
  connect(leftOut_, &QPushButton::clicked, this, &BenchFilters::changed);
  connect(native_, &QPushButton::clicked, this, &BenchFilters::changed);
  addChips<Layer>(row, filter_.layers,
                  {{Layer::Main, "chip-main", tr("Main layer")},
                   {Layer::Ground, "chip-ground", tr("Ground")},
                   {Layer::Bulbs, "chip-bulbs", tr("Bulbs")}});
  addChips<Trait>(row, filter_.traits,
                  {{Trait::DeerResistant, "chip-deer", tr("Deer leave it")},
                   {Trait::RabbitResistant, "chip-rabbit", tr("Rabbits leave it")},
                   {Trait::HostPlant, "chip-host", tr("Caterpillars")},
                   {Trait::Nectar, "chip-nectar", tr("Nectar")},
                   {Trait::Evergreen, "chip-evergreen", tr("Evergreen")},
                   {Trait::SeeThrough, "chip-see-through", tr("See-through")}});
  layout()->addWidget(second_);
}

void BenchFilters::makeCombos(QWidget* row) {
  order_ = makeCombo(row, "bench-order", tr("Order of the cards"));
  order_->addItem(tr("Order: as found"));
  const std::array<std::pair<RankOrder, QString>, 6> orders{
      {{RankOrder::Fit, tr("Best fit first")},
       {RankOrder::BotanicalName, tr("Botanical name")},
       {RankOrder::CommonName, tr("Common name")},
       {RankOrder::Height, tr("Lowest first")},
       {RankOrder::FirstBloom, tr("First in flower")},
       {RankOrder::Family, tr("Family")}}};
  for (const auto& [order, words] : orders) order_->addItem(words, int(order));
  month_ = makeCombo(row, "bench-month", tr("In flower"));
  month_->addItem(tr("Any month"));
  for (int month = 1; month <= 12; ++month)
    month_->addItem(QLocale().standaloneMonthName(month), month);
  colour_ = makeCombo(row, "bench-colour", tr("Flower colour"));
  family_ = makeCombo(row, "bench-family", tr("Family"));
  height_ = makeCombo(row, "bench-height", tr("Greatest height in flower"));
}

QComboBox* BenchFilters::makeCombo(QWidget* row, const char* name, const QString& says) {
  auto* combo = new QComboBox(row);
  combo->setObjectName(QLatin1String(name));
  combo->setAccessibleName(says);
  combo->setToolTip(says);
  connect(combo, &QComboBox::activated, this, &BenchFilters::changed);
  row->layout()->addWidget(combo);
  return combo;
}

QPushButton* BenchFilters::makeChip(QWidget* row, const char* name, const QString& words) {
  auto* chip = new QPushButton(words, row);
  chip->setObjectName(QLatin1String(name));
  chip->setProperty("look", QStringLiteral("chip"));
  chip->setCheckable(true);
  return chip;
}

template <class E>
void BenchFilters::addChips(QWidget* row, std::set<E>& chosen,
                            const std::vector<std::tuple<E, const char*, QString>>& chips) {
  row->layout()->addWidget(gap(row));
  for (const auto& [value, name, words] : chips) {
    QPushButton* chip = makeChip(row, name, words);
    row->layout()->addWidget(chip);
    connect(chip, &QPushButton::toggled, this, [this, &chosen, each = value](bool on) {
      on ? void(chosen.insert(each)) : void(chosen.erase(each));
      emit changed();
    });
  }
}

Choice BenchFilters::choice() const {
  Choice choice;
  choice.filter = filter_;
  choice.filter.words = search_->text().toStdString();
  choice.filter.colours = one(*colour_);
  choice.filter.families = one(*family_);
  if (native_->isChecked()) choice.filter.state = state_;
  if (const int month = month_->currentData().toInt()) choice.filter.inFlower = weeksOfMonth(month);
  if (const int feet = height_->currentData().toInt()) choice.filter.highest = Length::feet(feet);
  if (order_->currentIndex() > 0) choice.order = RankOrder(order_->currentData().toInt());
  if (place_ != PlaceKind::None && leftOut_->isChecked())
    choice.of = ChoiceOf::LeftOut;
  else if (place_ != PlaceKind::None && fitsWanted_)
    choice.of = ChoiceOf::Suiting;
  return choice;
}

void BenchFilters::refill(QComboBox& combo, const QString& any,
                          const std::set<std::string>& words) {
  const QString chosen = combo.currentIndex() > 0 ? combo.currentText() : QString();
  combo.clear();
  combo.addItem(any);
  for (const std::string& word : words)
    if (!word.empty()) combo.addItem(text(word));
  combo.setCurrentIndex(chosen.isEmpty() ? 0 : std::max(0, combo.findText(chosen)));
}

void BenchFilters::offerHeights(UnitSystem units) {
  const int chosen = std::max(0, height_->currentIndex());
  height_->clear();
  height_->addItem(tr("Any height"));
  for (const int feet : kHeights)
    height_->addItem(tr("Up to %1").arg(text(formatPlantSize(Length::feet(feet), units))), feet);
  height_->setCurrentIndex(chosen);
}

void BenchFilters::offer(const Catalogue& facts, const std::string& state, UnitSystem units) {
  std::set<std::string> families, colours;
  for (const Species& species : facts.species()) {
    families.insert(species.family);
    if (showsFlowers(species)) colours.insert(species.flowerColourWord);
  }
  refill(*family_, tr("Any family"), families);
  refill(*colour_, tr("Any colour"), colours);
  offerHeights(units);
  offerState(state);
}

void BenchFilters::showDeer(DeerAbout about, bool writable) {
  deer_->setChecked(about == DeerAbout::Yes);
  deer_->setEnabled(writable);
}

void BenchFilters::offerState(const std::string& state) {
  state_ = state;
  native_->setEnabled(!state.empty());
  if (state.empty()) native_->setChecked(false);
  native_->setToolTip(state.empty()
                          ? tr("Say in which state the yard lies to filter by it")
                          : tr("Recorded as native in %1 (USDA PLANTS); a first filter, no promise")
                                .arg(text(state)));
}

void BenchFilters::setPlace(PlaceKind kind) {
  place_ = kind;
  const bool any = kind != PlaceKind::None;
  fits_->setEnabled(any);
  fits_->setChecked(any && fitsWanted_);
  fits_->setToolTip(
      any ? tr("Only what suits the sun, moisture, soil, state, zone and height limit")
          : tr("Select a bed to see what suits it"));
  leftOut_->setEnabled(any);
  leftOut_->setToolTip(any ? tr("What does not suit the place, each with the reason")
                           : tr("Select a bed to see what does not suit it, and why"));
}

void BenchFilters::setCount(const QString& words) {
  count_->setText(words);
}

}  // namespace tussock
