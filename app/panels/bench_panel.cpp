// SPDX-License-Identifier: MIT
#include "app/panels/bench_panel.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QPainter>
#include <QThreadPool>
#include <QVBoxLayout>

#include "app/look/theme.h"
#include "app/panels/bench_filters.h"
#include "app/panels/card_strip.h"
#include "app/panels/compare_desk.h"
#include "app/panels/list_desk.h"
#include "app/panels/reason_words.h"
#include "app/panels/selection.h"
#include "app/panels/species_marks.h"
#include "core/catalog/bed_request.h"
#include "core/edit/draft.h"

namespace tussock {

BenchPanel::BenchPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      filters_(new BenchFilters(this)),
      cards_(new CardStrip(this)),
      desk_(new ListDesk(document, this)),
      compare_(new CompareDesk(document, this)) {
  setObjectName(QStringLiteral("bench"));
  setAccessibleName(tr("Bench"));
  cards_->setObjectName(QStringLiteral("bench-cards"));
  cards_->setMore([this](const Species& species) { return reasonsFor(species); });
  filters_->search()->installEventFilter(this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, kSpace2, 0, 0);
  column->setSpacing(kSpace2);
  column->addWidget(filters_);
  column->addWidget(cards_);
  column->addWidget(desk_);
  column->addWidget(compare_);
  desk_->hide();
  compare_->hide();
  connectCards();
  connectDocument();
  takeFacts();
  refresh();
}

QLineEdit* BenchPanel::searchField() const {
  return filters_->search();
}

void BenchPanel::connectDocument() {
  connect(filters_, &BenchFilters::changed, this, &BenchPanel::refresh);
  connect(desk_, &ListDesk::left, this, [this] { put(Shows::Cards); });
  connect(compare_, &CompareDesk::left, this, [this] { put(Shows::Cards); });
  connect(filters_, &BenchFilters::deerSaid, this, &BenchPanel::keepDeer);
  const auto another = [this] {
    if (point_) emit pointAsked({});
    point_.reset();
    planted_.reset();
    refresh();
  };
  connect(&document_, &Document::factsChanged, this, &BenchPanel::takeFacts);
  connect(&document_, &Document::opened, this, &BenchPanel::takeFacts);
  connect(&document_, &Document::opened, this, another);
  connect(&document_, &Document::changed, this, [this] {
    if (offeredFor() != offered_) takeFacts();
    refresh();
  });
  connect(&document_, &Document::selectionChanged, this, another);
  connect(&document_, &Document::sunMapChanged, this, &BenchPanel::refresh);
}

void BenchPanel::connectCards() {
  connect(cards_, &CardStrip::lifted, this, &BenchPanel::speciesLifted);
  connect(cards_, &CardStrip::carried, this, &BenchPanel::speciesCarried);
  connect(cards_, &CardStrip::dropped, this, &BenchPanel::speciesDropped);
  connect(cards_, &CardStrip::putBack, this, &BenchPanel::speciesPutBack);
  connect(cards_, &CardStrip::countStepped, this, &BenchPanel::countStepped);
  connect(cards_, &CardStrip::factsWanted, this, &BenchPanel::factsWanted);
}

std::pair<std::string, UnitSystem> BenchPanel::offeredFor() const {
  const Settings& settings = document_.yard().settings;
  return {settings.state, settings.units};
}

void BenchPanel::takeFacts() {
  offered_ = offeredFor();
  filters_->offer(document_.facts(), offered_.first, offered_.second);
  planted_.reset();  // it points into the facts of before
  // The index of a search is made when first asked for: before the first key, that is here.
  QThreadPool::globalInstance()->start([facts = document_.facts()] { (void)facts.search({}); });
}

void BenchPanel::showList(bool shown) {
  put(shown ? Shows::List : Shows::Cards);
}

void BenchPanel::showArrangements() {
  put(Shows::Arrangements);
}

void BenchPanel::put(Shows shows) {
  filters_->setVisible(shows == Shows::Cards);
  cards_->setVisible(shows == Shows::Cards);
  desk_->setVisible(shows == Shows::List);
  compare_->setVisible(shows == Shows::Arrangements);
  emit listShown(shows == Shows::List);
}

void BenchPanel::askAt(Point at) {
  showList(false);
  point_ = at;
  planted_.reset();
  refresh();
  emit pointAsked(at);
}

void BenchPanel::keepDeer(DeerAbout about) {
  Settings settings = document_.yard().settings;
  settings.deerAbout = about;
  Draft draft(document_.yard());
  draft.put(std::move(settings));
  document_.commit(draft.finish(tr("Say whether deer are about").toStdString()));
  refresh();  // as it was, where that could not be kept
}

const Bed* BenchPanel::selectedBed() const {
  return bedOfSelection(document_.yard(), document_.selection());
}

std::optional<RankRequest> BenchPanel::request() const {
  const auto sun = document_.sunMap();
  const Yard& yard = document_.yard();
  if (point_) {
    const auto hours = sun ? sun->hoursAt(*point_) : std::nullopt;
    return requestAt(yard, document_.facts(), *point_,
                     hours ? std::optional(hours->total()) : std::nullopt);
  }
  const Bed* bed = selectedBed();
  if (!bed) return std::nullopt;
  return requestFor(yard, document_.facts(), *bed,
                    sun ? sun->meanHours(bed->outline) : std::nullopt);
}

std::optional<RankRequest> BenchPanel::steadyRequest() {
  auto now = request();
  if (!now) return now;
  if (!planted_) planted_ = now->planted;
  now->planted = *planted_;
  return now;
}

void BenchPanel::refresh() {
  using Kind = BenchFilters::PlaceKind;
  filters_->showDeer(document_.yard().settings.deerAbout,
                     document_.isOpen() && !document_.isReadOnly());
  filters_->setPlace(point_ ? Kind::Point : selectedBed() ? Kind::Bed : Kind::None);
  Choice choice = filters_->choice();
  choice.place = steadyRequest();
  shown_ = choose(document_.facts(), choice);
  cards_->setUnits(document_.yard().settings.units);
  if (shown_.empty()) cards_->setEmptyText(emptyWords(choice));
  filters_->setCount(countWords(choice.of));
  std::vector<const Species*> species;
  QStringList notes;
  for (const Ranked& one : shown_) {
    species.push_back(one.species);
    if (choice.of == ChoiceOf::LeftOut) notes << text(one.whyNot.front());
  }
  cards_->show(std::move(species), std::move(notes));
}

QString BenchPanel::countWords(ChoiceOf of) const {
  const auto grouped = [](std::size_t count) { return QLocale().toString(qulonglong(count)); };
  const QString all = grouped(document_.facts().species().size()), shown = grouped(shown_.size());
  if (of == ChoiceOf::Suiting) return tr("%1 of %2 fit %3").arg(shown, all, placeWords());
  if (of == ChoiceOf::LeftOut) return tr("%1 of %2 left out").arg(shown, all);
  return shown == all ? tr("%1 species").arg(all) : tr("%1 of %2 species").arg(shown, all);
}

QString BenchPanel::placeWords() const {
  return point_ ? tr("this point") : tr("this bed");
}

// What was searched for may be left out of the place alone.
QString BenchPanel::emptyWords(Choice choice) const {
  const bool askedForLeft = choice.of == ChoiceOf::LeftOut;
  choice.of = askedForLeft ? ChoiceOf::Suiting : ChoiceOf::LeftOut;
  const auto others = choose(document_.facts(), choice);
  if (others.empty())
    return tr("No species answers to all of this. Take a filter away, or search for fewer words.");
  if (askedForLeft)
    return others.size() == document_.facts().species().size()
               ? tr("Nothing is left out of %1.").arg(placeWords())
               : tr("None of those is left out of %1.").arg(placeWords());
  return tr("%1 does not fit %2: %3. Turn “Fits here” off to plant it all the same.")
      .arg(text(document_.facts().nameApart(*others.front().species)), placeWords(),
           joinedReasons(others.front().whyNot));
}

// For the tool tip of a card, while a bed or point is chosen.
QString BenchPanel::reasonsFor(const Species& species) const {
  const auto asked = request();
  if (!asked) return {};
  Ranked ranked = rankOf(species, *asked);
  for (const Ranked& one : shown_)
    if (one.species == &species && !one.overEquals.empty()) ranked.overEquals = one.overEquals;
  if (!ranked.suits())
    return tr("Does not fit %1: %2").arg(placeWords(), joinedReasons(ranked.whyNot));
  const QString told = joinedReasons(toldReasons(ranked));
  if (told.isEmpty()) return {};
  return tr("%1 of 100 for %2: %3").arg(qRound(ranked.points)).arg(placeWords(), told);
}

// From the search field, Down and Enter go on to the cards.
bool BenchPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == filters_->search() && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter) {
      cards_->setFocus(Qt::TabFocusReason);
      return true;
    }
    if (key == Qt::Key_Escape && !filters_->search()->text().isEmpty()) {
      filters_->search()->clear();
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
