// SPDX-License-Identifier: MIT
#include "app/panels/margin_panel.h"

#include <algorithm>
#include <memory>
#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPointer>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/document/personal_catalogue.h"
#include "app/look/theme.h"
#include "app/panels/fault_report.h"
#include "app/panels/field_text.h"
#include "app/panels/findings_list.h"
#include "app/panels/plant_sheet.h"
#include "app/panels/scrolled.h"
#include "app/panels/selection_view.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

constexpr int kLeastFindings = 232;  // pixels: the first finding with its buttons
constexpr double kMostOfAll = 0.6;   // of a low margin: the rest shows what is selected
constexpr double kFindingsShare = 0.4;
constexpr int kLeastBesideSheet = 44;  // pixels: how many findings there are
constexpr int kSheet = 560;            // pixels that a sheet takes where it can

// Scrolls to a part of the list that asks for words, and again as it grows.
void followAsking(FindingsList& list, QScrollArea& area) {
  auto asked = std::make_shared<QPointer<QWidget>>();
  const auto see = [&area, asked] {
    QMetaObject::invokeMethod(
        &area,
        [&area, asked] {
          if (*asked && (*asked)->isVisible()) area.ensureWidgetVisible(*asked, 0, kSpace2);
        },
        Qt::QueuedConnection);
  };
  QObject::connect(&list, &FindingsList::asking, &area, [asked, see](QWidget* part) {
    *asked = part;
    see();
  });
  QObject::connect(area.verticalScrollBar(), &QScrollBar::rangeChanged, &area, [asked, see] {
    if (*asked && (*asked)->isAncestorOf(QApplication::focusWidget())) see();
  });
}

}  // namespace

MarginPanel::MarginPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(new SelectionView(document)),
      personal_(new PersonalCatalogue(document, this)),
      plant_(new PlantSheet(document, *personal_)),
      faults_(new FaultReport),
      findings_(new FindingsList(document)),
      halves_(new QSplitter(this)),
      totals_(new QLabel(this)) {
  setObjectName(QStringLiteral("margin"));
  setAccessibleName(tr("Margin"));
  setMinimumWidth(300);
  setMaximumWidth(460);
  halves_->setOrientation(Qt::Vertical);
  halves_->addWidget(makeUpper());
  halves_->addWidget(makeFindings());
  halves_->setChildrenCollapsible(false);
  halves_->setHandleWidth(1);
  halves_->setStretchFactor(0, 3);
  halves_->setStretchFactor(1, 2);
  totals_->setObjectName(QStringLiteral("margin-totals"));
  totals_->setProperty("look", QStringLiteral("quiet"));
  totals_->setWordWrap(true);
  totals_->setContentsMargins(kSpace4 + kSpace1, kSpace2, kSpace4, kSpace3);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(1, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(halves_, 1);
  column->addWidget(totals_);
  connect(halves_, &QSplitter::splitterMoved, this, [this] { sharedByHand_ = true; });
  connect(upper_, &QStackedWidget::currentChanged, this, &MarginPanel::shareHeight);
  connect(findings_, &FindingsList::findingChosen, this, &MarginPanel::findingChosen);
  connect(findings_, &FindingsList::countsChanged, this,
          [this] { counts_->setText(findings_->countWords()); });
  connect(&document_, &Document::opened, this, &MarginPanel::showTotals);
  connect(&document_, &Document::changed, this, &MarginPanel::showTotals);
  counts_->setText(findings_->countWords());
  showTotals();
}

QWidget* MarginPanel::makeUpper() {
  upper_ = new QStackedWidget;
  upper_->addWidget(scrolled(selection_, QStringLiteral("margin-selection")));
  plantArea_ = scrolled(plant_, QStringLiteral("margin-plant"));
  upper_->addWidget(plantArea_);
  faultsArea_ = scrolled(faults_, QStringLiteral("margin-faults"));
  upper_->addWidget(faultsArea_);
  connect(faults_, &FaultReport::left, this, &MarginPanel::showSelection);
  connect(plant_, &PlantSheet::left, this, &MarginPanel::showSelection);
  connect(selection_, &SelectionView::factsWanted, this, &MarginPanel::showPlant);
  connect(selection_, &SelectionView::listWanted, this, &MarginPanel::listWanted);
  connect(selection_, &SelectionView::compareWanted, this, &MarginPanel::compareWanted);
  connect(&document_, &Document::selectionChanged, this, &MarginPanel::showSelection);
  return upper_;
}

void MarginPanel::showSelection() {
  upper_->setCurrentIndex(0);
  plant_->putAway();
}

void MarginPanel::showPlant(const QString& botanicalName) {
  plant_->showPlant(botanicalName.toStdString());
  plantArea_->ensureVisible(0, 0);
  upper_->setCurrentWidget(plantArea_);
}

void MarginPanel::startPlant() {
  upper_->setCurrentWidget(plantArea_);
  plantArea_->ensureVisible(0, 0);
  plant_->startNew();
}

void MarginPanel::takeFaults(const QString& title, const std::vector<CatalogueError>& faults) {
  faults_->take(title, faults);
  showFaults();
}

void MarginPanel::showFaults() {
  upper_->setCurrentWidget(faultsArea_);
}

Filling& MarginPanel::filling() const {
  return selection_->filling();
}

Survey& MarginPanel::survey() const {
  return selection_->survey();
}

void MarginPanel::preview(const ChangeSet& edit) {
  selection_->preview(edit);
}

void MarginPanel::setWeek(std::optional<int> week) {
  selection_->setWeek(week);
}

QWidget* MarginPanel::makeFindings() {
  auto* box = new QWidget;
  auto* title = new QLabel(tr("Findings"), box);
  title->setProperty("look", QStringLiteral("heading"));
  counts_ = new QLabel(box);
  counts_->setObjectName(QStringLiteral("findings-count"));
  counts_->setProperty("look", QStringLiteral("quiet"));
  auto* head = new QHBoxLayout;
  head->setContentsMargins(kSpace4 + kSpace1, kSpace3, kSpace4, kSpace1);
  head->addWidget(title);
  head->addStretch(1);
  head->addWidget(counts_);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addLayout(head);
  QScrollArea* area = scrolled(findings_, QStringLiteral("margin-findings"));
  area->setMinimumHeight(1);  // the heading alone stays beside a sheet
  followAsking(*findings_, *area);
  column->addWidget(area, 1);
  return box;
}

void MarginPanel::showTotals() {
  const Totals totals = totalsOf(document_.yard());
  totals_->setVisible(document_.isOpen());
  totals_->setText(tr("%1 · %2 species · %3 % of the ground taken")
                       .arg(plantCountText(totals))
                       .arg(totals.species)
                       .arg(qRound(totals.share() * 100.0)));
}

// Until someone moves the line between them: findings keep their first one with its buttons, and a
// sheet of a plant gets as much as it can.
void MarginPanel::shareHeight() {
  if (sharedByHand_) return;
  const int both = halves_->height();
  const int least = std::min(kLeastFindings, int(both * kMostOfAll));
  const bool sheet = upper_->currentIndex() != 0;
  const int lower = sheet ? std::max(kLeastBesideSheet, both - kSheet)
                          : std::max(least, int(both * kFindingsShare));
  halves_->setSizes({both - lower, lower});
}

void MarginPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  shareHeight();
}

void MarginPanel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Theme& theme = currentTheme();
  painter.fillRect(rect(), theme.panel);
  painter.fillRect(QRect(0, 0, 1, height()), theme.line);
  if (totals_->isVisible()) painter.fillRect(QRect(0, totals_->y(), width(), 1), theme.line);
}

}  // namespace tussock
