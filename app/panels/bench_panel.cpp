// SPDX-License-Identifier: MIT
#include "app/panels/bench_panel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/card_strip.h"
#include "app/panels/flow_layout.h"
#include "app/panels/reason_words.h"
#include "app/panels/selection.h"
#include "core/catalog/bed_request.h"

namespace tussock {

namespace {

QFrame* gap(QWidget* parent) {
  auto* frame = new QFrame(parent);
  frame->setFixedSize(kSpace2, 1);
  return frame;
}

}  // namespace

BenchPanel::BenchPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("bench"));
  setAccessibleName(tr("Bench"));
  cards_ = new CardStrip(this);
  cards_->setObjectName(QStringLiteral("bench-cards"));
  cards_->setMore([this](const Species& species) { return reasonsFor(species); });
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, kSpace2, 0, 0);
  column->setSpacing(kSpace2);
  column->addWidget(makeFilters());
  column->addWidget(cards_);
  connectCards();
  connect(&document_, &Document::opened, this, &BenchPanel::refresh);
  connect(&document_, &Document::changed, this, &BenchPanel::refresh);
  connect(&document_, &Document::selectionChanged, this, &BenchPanel::refresh);
  connect(&document_, &Document::sunMapChanged, this, &BenchPanel::refresh);
  refresh();
}

QWidget* BenchPanel::makeFilters() {
  auto* bar = new QWidget(this);
  auto* line = new QHBoxLayout(bar);
  line->setContentsMargins(kSpace4, 0, kSpace4, 0);
  line->setSpacing(kSpace3);
  search_ = new QLineEdit(bar);
  search_->setObjectName(QStringLiteral("bench-search"));
  search_->setPlaceholderText(tr("Search: tall, dry, fall, aster"));
  search_->setAccessibleName(tr("Search species"));
  search_->setClearButtonEnabled(true);
  search_->addAction(icon(QStringLiteral("search")), QLineEdit::LeadingPosition);
  search_->setFixedWidth(248);
  search_->installEventFilter(this);
  connect(search_, &QLineEdit::textChanged, this, &BenchPanel::refresh);
  auto* chips = new QWidget(bar);
  chips->setLayout(new FlowLayout(kSpace1 + 2, kSpace1 + 2));
  fits_ = makeChip(chips, QStringLiteral("chip-fits"), tr("Fits here"));
  connect(fits_, &QPushButton::clicked, this, [this](bool on) {
    fitsWanted_ = on;
    refresh();
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
                   {Habit::Sedge, "chip-sedge", tr("Sedges")},
                   {Habit::Fern, "chip-fern", tr("Ferns")},
                   {Habit::Shrub, "chip-shrub", tr("Shrubs")},
                   {Habit::Vine, "chip-vine", tr("Vines")}});
  count_ = new QLabel(bar);
  count_->setObjectName(QStringLiteral("bench-count"));
  count_->setProperty("look", QStringLiteral("quiet"));
  line->addWidget(search_, 0, Qt::AlignTop);
  line->addWidget(chips, 1);
  line->addWidget(count_, 0, Qt::AlignVCenter);
  return bar;
}

QPushButton* BenchPanel::makeChip(QWidget* parent, const QString& name, const QString& words) {
  auto* chip = new QPushButton(words, parent);
  chip->setObjectName(name);
  chip->setProperty("look", QStringLiteral("chip"));
  chip->setCheckable(true);
  parent->layout()->addWidget(chip);
  return chip;
}

template <class E>
void BenchPanel::addChips(QWidget* row, std::set<E>& chosen,
                          const std::vector<std::tuple<E, const char*, QString>>& chips) {
  row->layout()->addWidget(gap(row));
  for (const auto& [value, name, words] : chips) {
    QPushButton* chip = makeChip(row, QLatin1String(name), words);
    connect(chip, &QPushButton::toggled, this, [this, &chosen, one = value](bool on) {
      on ? void(chosen.insert(one)) : void(chosen.erase(one));
      refresh();
    });
  }
}

void BenchPanel::connectCards() {
  connect(cards_, &CardStrip::lifted, this, &BenchPanel::speciesLifted);
  connect(cards_, &CardStrip::carried, this, &BenchPanel::speciesCarried);
  connect(cards_, &CardStrip::dropped, this, &BenchPanel::speciesDropped);
  connect(cards_, &CardStrip::putBack, this, &BenchPanel::speciesPutBack);
  connect(cards_, &CardStrip::countStepped, this, &BenchPanel::countStepped);
}

const Bed* BenchPanel::selectedBed() const {
  return bedOfSelection(document_.yard(), document_.selection());
}

RankRequest BenchPanel::requestOf(const Bed& bed) const {
  const auto sun = document_.sunMap();
  return requestFor(document_.yard(), document_.facts(), bed,
                    sun ? sun->meanHours(bed.outline) : std::nullopt);
}

QString BenchPanel::emptyWords() const {
  const auto left = leftOut(document_.facts(), filter_, 1);
  if (left.empty())
    return tr("No species answers to all of this. Take a filter away, or search for fewer words.");
  return tr("%1 does not fit this bed: %2. Turn “Fits here” off to plant it all the same.")
      .arg(QString::fromStdString(document_.facts().nameApart(*left.front().species)),
           reasonWords(left.front().whyNot));
}

// For the tool tip of a card, while a bed is selected.
QString BenchPanel::reasonsFor(const Species& species) const {
  const Bed* bed = selectedBed();
  if (!bed) return {};
  const Ranked ranked = rankOf(species, requestOf(*bed));
  if (!ranked.suits()) return tr("Does not fit this bed: %1").arg(reasonWords(ranked.whyNot));
  if (ranked.reasons.empty()) return {};
  return tr("For this bed: %1").arg(reasonWords(ranked.reasons));
}

void BenchPanel::refresh() {
  const Bed* bed = selectedBed();
  const Settings& settings = document_.yard().settings;
  filter_.words = search_->text().toStdString();
  filter_.fits = bed && fitsWanted_ ? std::optional(requestOf(*bed)) : std::nullopt;
  if (filter_.fits) filter_.fits->planted.clear();  // cards keep their order while one plants
  fits_->setEnabled(bed != nullptr);
  fits_->setChecked(filter_.fits.has_value());
  fits_->setToolTip(bed ? tr("Only what suits the sun, soil, state and zone of this bed")
                        : tr("Select a bed to see what suits it"));
  cards_->setUnits(settings.units);
  auto shown = shownSpecies(document_.facts(), filter_);
  if (shown.empty()) cards_->setEmptyText(emptyWords());
  count_->setText(countWords(shown.size()));
  if (shown != cards_->species()) cards_->show(std::move(shown));
}

QString BenchPanel::countWords(std::size_t shown) const {
  const std::size_t all = document_.facts().species().size();
  if (filter_.fits) return tr("%1 of %2 fit this bed").arg(shown).arg(all);
  return shown == all ? tr("%1 species").arg(all) : tr("%1 of %2 species").arg(shown).arg(all);
}

// From the search field, Down and Enter go on to the cards.
bool BenchPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter) {
      cards_->setFocus(Qt::TabFocusReason);
      return true;
    }
    if (key == Qt::Key_Escape && !search_->text().isEmpty()) {
      search_->clear();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void BenchPanel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), currentTheme().panel);
  painter.fillRect(QRect(0, 0, width(), 1), currentTheme().line);
}

}  // namespace tussock
