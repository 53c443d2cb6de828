// SPDX-License-Identifier: MIT
#include "app/panels/year_panel.h"

#include <algorithm>
#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <set>

#include "app/look/glyphs.h"
#include "app/look/icons.h"
#include "app/look/theme.h"
#include "app/panels/place_words.h"
#include "app/panels/species_marks.h"
#include "app/panels/year_ruler.h"
#include "core/catalog/bloom.h"
#include "core/catalog/season_weeks.h"
#include "core/catalog/usual_flowers.h"

namespace tussock {

namespace {

constexpr int kHeadWidth = 224;

// One band for each species planted, those that flower first on top.
std::vector<BloomBand> bandsOf(const Yard& yard, const Catalogue& facts) {
  std::set<std::string> planted;
  for (const Drift& drift : yard.drifts)
    if (!drift.plants.empty()) planted.insert(drift.species);
  std::vector<const Species*> inFlower;
  for (const std::string& name : planted) {
    const Species* species = facts.find(name);
    if (species && flowerColourOf(*species) && species->bloomWeeks()) inFlower.push_back(species);
  }
  const auto start = [&](const Species* one) { return firstBloomPlace(*one, facts.hemisphere()); };
  std::stable_sort(inFlower.begin(), inFlower.end(),
                   [&](const auto* a, const auto* b) { return start(a) < start(b); });
  std::vector<BloomBand> bands;
  for (const Species* species : inFlower) {
    BloomBand band{text(species->botanicalName),
                   glyphLook(*species, std::nullopt, currentTheme().dark).flower,
                   {}};
    const WeekSet weeks = weeksInFlower(*species);
    for (int week = 0; week < kWeeksInYear; ++week) band.weeks.push_back((weeks >> week) & 1u);
    bands.push_back(std::move(band));
  }
  return bands;
}

}  // namespace

YearPanel::YearPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("year"));
  setAccessibleName(tr("Year"));
  ruler_ = new YearRuler(this);
  ruler_->setObjectName(QStringLiteral("year-ruler"));
  foldButton_ = new QToolButton(this);
  foldButton_->setObjectName(QStringLiteral("year-fold"));
  foldButton_->setProperty("look", QStringLiteral("rail"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(kSpace4, kSpace1, kSpace3, kSpace1 + 1);
  line->setSpacing(kSpace3);
  line->addWidget(makeHead());
  line->addWidget(ruler_, 1);
  line->addWidget(foldButton_, 0, Qt::AlignTop);
  connect(foldButton_, &QToolButton::clicked, this, [this] { folded_ ? unfold() : fold(); });
  connect(ruler_, &YearRuler::weekChanged, this, [this](std::optional<int> week) {
    showWeek();
    emit weekChanged(week);
  });
  connect(&document_, &Document::opened, this, &YearPanel::refresh);
  connect(&document_, &Document::changed, this, &YearPanel::refresh);
  setFolded();
  refresh();
}

QWidget* YearPanel::makeHead() {
  auto* head = new QWidget(this);
  head->setFixedWidth(kHeadWidth);
  name_ = new QLabel(head);
  name_->setObjectName(QStringLiteral("year-yard-name"));
  name_->setTextFormat(Qt::PlainText);
  place_ = new QLabel(head);
  place_->setProperty("look", QStringLiteral("quiet"));
  anyWeek_ = new QPushButton(tr("Show all in flower"), head);
  anyWeek_->setObjectName(QStringLiteral("year-any-week"));
  anyWeek_->setProperty("look", QStringLiteral("link"));
  connect(anyWeek_, &QPushButton::clicked, this, [this] { setWeek(std::nullopt); });
  under_ = new QStackedWidget(head);
  under_->setFixedHeight(22);
  under_->addWidget(place_);
  under_->addWidget(anyWeek_);
  years_ = makeYears();
  auto* column = new QVBoxLayout(head);
  column->setContentsMargins(0, kSpace1, 0, 0);
  column->setSpacing(kSpace1);
  column->addWidget(name_);
  column->addWidget(under_);
  column->addWidget(years_);
  column->addStretch(1);
  return head;
}

QWidget* YearPanel::makeYears() {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kSpace1);
  yearGroup_ = new QButtonGroup(this);
  const QStringList words{tr("Year 1"), tr("2"), tr("3"), tr("Mature")};
  for (int year = 0; year < words.size(); ++year) {
    auto* button = new QPushButton(words[year], row);
    const bool mature = GrowthYear(year) == GrowthYear::Mature;
    button->setObjectName(QStringLiteral("year-%1").arg(year + 1));
    button->setProperty("look", QStringLiteral("chip"));
    button->setCheckable(true);
    button->setChecked(mature);
    button->setAccessibleName(mature ? tr("Mature") : tr("Year %1").arg(year + 1));
    yearGroup_->addButton(button, year);
    line->addWidget(button);
  }
  line->addStretch(1);
  connect(yearGroup_, &QButtonGroup::idClicked, this,
          [this](int year) { emit yearChanged(GrowthYear(year)); });
  return row;
}

std::optional<int> YearPanel::week() const {
  return ruler_->week();
}

void YearPanel::setWeek(std::optional<int> week) {
  if (week == ruler_->week()) return;
  ruler_->setWeek(week);
  showWeek();
  emit weekChanged(week);
}

GrowthYear YearPanel::year() const {
  return GrowthYear(yearGroup_->checkedId());
}

void YearPanel::fold() {
  folded_ = true;
  setFolded();
}

void YearPanel::unfold() {
  folded_ = false;
  setFolded();
}

void YearPanel::setFolded() {
  ruler_->setForm(folded_ ? YearRuler::Form::Folded : YearRuler::Form::Open);
  under_->setVisible(!folded_);
  years_->setVisible(!folded_);
  name_->setFont(fontFor(folded_ ? TextRole::Body : TextRole::Heading));
  foldButton_->setIcon(icon(folded_ ? QStringLiteral("unfold") : QStringLiteral("fold")));
  foldButton_->setToolTip(folded_ ? tr("Open the year") : tr("Fold the year away"));
  foldButton_->setAccessibleName(foldButton_->toolTip());
  showWeek();
}

void YearPanel::showWeek() {
  under_->setCurrentWidget(week() ? static_cast<QWidget*>(anyWeek_) : place_);
}

void YearPanel::refresh() {
  const Settings& settings = document_.yard().settings;
  name_->setText(
      QFontMetrics(name_->font())
          .elidedText(QString::fromStdString(settings.name), Qt::ElideRight, kHeadWidth));
  place_->setText(placeWords(settings));
  ruler_->setFrosts(settings.lastFrost, settings.firstFrost);
  ruler_->setHalf(document_.facts().hemisphere());
  ruler_->setBands(bandsOf(document_.yard(), document_.facts()));
}

void YearPanel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), currentTheme().panel);
  painter.fillRect(QRect(0, height() - 1, width(), 1), currentTheme().line);
}

}  // namespace tussock
