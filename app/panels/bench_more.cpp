// SPDX-License-Identifier: MIT
#include "app/panels/bench_more.h"

#include <array>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLocale>

#include "app/look/theme.h"
#include "app/panels/filter_chips.h"
#include "app/panels/flow_layout.h"
#include "app/panels/species_marks.h"

namespace tussock {

namespace {

// Greatest heights to choose from, in feet, as catalogues give them.
constexpr std::array<int, 5> kHeights{1, 2, 3, 4, 6};

std::set<std::string> one(const QComboBox& combo) {
  if (combo.currentIndex() <= 0) return {};
  return {combo.currentText().toStdString()};
}

void refill(QComboBox& combo, const QString& any, const std::set<std::string>& words) {
  const QString chosen = combo.currentIndex() > 0 ? combo.currentText() : QString();
  combo.clear();
  combo.addItem(any);
  for (const std::string& word : words)
    if (!word.empty()) combo.addItem(text(word));
  combo.setCurrentIndex(chosen.isEmpty() ? 0 : std::max(0, combo.findText(chosen)));
}

}  // namespace

BenchMore::BenchMore(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("bench-more"));
  auto* row = new QWidget(this);
  row->setLayout(new FlowLayout(kSpace1 + 2, kSpace1 + 2));
  auto* inset = new QHBoxLayout(this);
  inset->setContentsMargins(kSpace4, 0, kSpace4, 0);
  inset->addWidget(row);
  makeCombos(row);
  makePlaceChips(row);
  makeTraitChips(row);
}

void BenchMore::makePlaceChips(QWidget* row) {
  leftOut_ = makeChip(row, "chip-left-out", tr("Left out"));
  native_ = makeChip(row, "chip-native", tr("Recorded here"));
  deer_ = makeChip(row, "chip-deer-about", tr("Deer about"));
  deer_->setToolTip(
      tr("Kept in the yard: what deer eat does not fit, what they leave fits better"));
  for (QPushButton* chip : {leftOut_, native_, deer_}) row->layout()->addWidget(chip);
  connect(leftOut_, &QPushButton::clicked, this, &BenchMore::changed);
  connect(native_, &QPushButton::clicked, this, &BenchMore::changed);
  connect(deer_, &QPushButton::clicked, this,
          [this](bool about) { emit deerSaid(about ? DeerAbout::Yes : DeerAbout::No); });
}

void BenchMore::makeTraitChips(QWidget* row) {
  const auto told = [this] { emit changed(); };
  addChips<Layer>(row, layers_,
                  {{Layer::Main, "chip-main", tr("Main layer")},
                   {Layer::Ground, "chip-ground", tr("Ground layer")},
                   {Layer::Bulbs, "chip-bulbs", tr("Bulb layer")}},
                  told);
  addChips<Trait>(row, traits_,
                  {{Trait::DeerResistant, "chip-deer", tr("Deer leave it")},
                   {Trait::RabbitResistant, "chip-rabbit", tr("Rabbits leave it")},
                   {Trait::HostPlant, "chip-host", tr("Caterpillars")},
                   {Trait::Nectar, "chip-nectar", tr("Nectar")},
                   {Trait::Evergreen, "chip-evergreen", tr("Evergreen")},
                   {Trait::SeeThrough, "chip-see-through", tr("See-through")}},
                  told);
}

void BenchMore::makeCombos(QWidget* row) {
  order_ = makeCombo(row, "bench-order", tr("Order of the cards"));
  order_->addItem(tr("Order: usual"));
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

QComboBox* BenchMore::makeCombo(QWidget* row, const char* name, const QString& says) {
  auto* combo = new QComboBox(row);
  combo->setObjectName(QLatin1String(name));
  combo->setAccessibleName(says);
  combo->setToolTip(says);
  connect(combo, &QComboBox::activated, this, &BenchMore::changed);
  row->layout()->addWidget(combo);
  return combo;
}

void BenchMore::addTo(Choice& choice) const {
  PlantFilter& filter = choice.filter;
  filter.layers = layers_;
  filter.traits = traits_;
  filter.colours = one(*colour_);
  filter.families = one(*family_);
  if (native_->isChecked()) filter.state = state_;
  if (const int month = month_->currentData().toInt()) filter.months = {month};
  if (const int feet = height_->currentData().toInt()) filter.highest = Length::feet(feet);
  if (order_->currentIndex() > 0) choice.order = RankOrder(order_->currentData().toInt());
}

bool BenchMore::wantsLeftOut() const {
  return leftOut_->isChecked();
}

void BenchMore::setPlace(bool any) {
  leftOut_->setEnabled(any);
  leftOut_->setToolTip(any ? tr("What does not suit the place, each with the reason")
                           : tr("Select a bed to see what does not suit it, and why"));
}

void BenchMore::offerHeights(UnitSystem units) {
  const int chosen = std::max(0, height_->currentIndex());
  height_->clear();
  height_->addItem(tr("Any height"));
  for (const int feet : kHeights)
    height_->addItem(tr("Up to %1").arg(text(formatPlantSize(Length::feet(feet), units))), feet);
  height_->setCurrentIndex(chosen);
}

void BenchMore::offer(const Catalogue& facts, const std::string& state, UnitSystem units) {
  std::set<std::string> families;
  for (const Species& species : facts.species()) families.insert(species.family);
  refill(*family_, tr("Any family"), families);
  refill(*colour_, tr("Any colour"), coloursToChoose(facts));
  offerHeights(units);
  offerState(state);
}

void BenchMore::showDeer(DeerAbout about, bool writable) {
  deer_->setChecked(about == DeerAbout::Yes);
  deer_->setEnabled(writable);
}

void BenchMore::offerState(const std::string& state) {
  state_ = state;
  native_->setEnabled(!state.empty());
  if (state.empty()) native_->setChecked(false);
  native_->setToolTip(
      state.empty()
          ? tr("Say in which state the yard lies to filter by it")
          : tr("Recorded as native in %1 (USDA PLANTS, a few plants by other lists); a first "
               "filter, no promise")
                .arg(text(state)));
}

}  // namespace tussock
