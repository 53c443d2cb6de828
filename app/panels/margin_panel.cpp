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
#include "app/panels/fill_running.h"
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
constexpr int kLeastAboveFoot = 120;   // pixels of what is selected, over what stays in sight

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
  running_ = new FillRunning(document_, selection_->filling(), this);
  column->addWidget(running_);
  column->addWidget(totals_);
  connect(halves_, &QSplitter::splitterMoved, this,
          [this] { lowerByHand_ = halves_->sizes().last(); });
  connect(upper_, &QStackedWidget::currentChanged, this, [this](int page) {
    running_->setOwnBarInSight(page == 0);
    shareHeight();
  });
  connect(findings_, &FindingsList::findingChosen, this, &MarginPanel::findingChosen);
  connect(findings_, &FindingsList::told, this, &MarginPanel::told);
  connect(findings_, &FindingsList::settled, this, &MarginPanel::settled);
  connect(findings_, &FindingsList::countsChanged, this, &MarginPanel::showFindings);
  connect(selection_, &SelectionView::footChanged, this, &MarginPanel::shareHeight);
  connect(&document_, &Document::opened, this, &MarginPanel::showTotals);
  connect(&document_, &Document::changed, this, &MarginPanel::showTotals);
  running_->setOwnBarInSight(upper_->currentIndex() == 0);
  showFindings();
  showTotals();
}

QWidget* MarginPanel::makeUpper() {
  upper_ = new QStackedWidget;
  upper_->addWidget(makeSelection());
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

// What is selected scrolls over its foot, which stays.
QWidget* MarginPanel::makeSelection() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  QScrollArea* area = scrolled(selection_, QStringLiteral("margin-selection"));
  area->setMinimumHeight(0);
  column->addWidget(area, 1);
  column->addWidget(selection_->foot());
  selection_->foot()->installEventFilter(this);
  return box;
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

SunSurvey& MarginPanel::survey() const {
  return selection_->survey();
}

void MarginPanel::forgetRefused() {
  selection_->forgetRefused();
}

void MarginPanel::preview(const ChangeSet& edit) {
  selection_->preview(edit);
}

void MarginPanel::setWeek(std::optional<int> week) {
  selection_->setWeek(week);
}

QWidget* MarginPanel::makeFindings() {
  lower_ = new QWidget;
  head_ = new QWidget(lower_);
  auto* title = new QLabel(tr("Findings"), head_);
  title->setProperty("look", QStringLiteral("heading"));
  counts_ = new QLabel(head_);
  counts_->setObjectName(QStringLiteral("findings-count"));
  counts_->setProperty("look", QStringLiteral("quiet"));
  auto* line = new QHBoxLayout(head_);
  line->setContentsMargins(kSpace4 + kSpace1, kSpace2, kSpace4, kSpace2);
  line->addWidget(title);
  line->addStretch(1);
  line->addWidget(counts_);
  auto* column = new QVBoxLayout(lower_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(head_);
  findingsArea_ = scrolled(findings_, QStringLiteral("margin-findings"));
  findingsArea_->setMinimumHeight(1);  // the heading alone stays beside a sheet
  followAsking(*findings_, *findingsArea_);
  column->addWidget(findingsArea_, 1);
  return lower_;
}

// Without any, the line that says so is all there is of them.
void MarginPanel::showFindings() {
  counts_->setText(findings_->countWords());
  head_->setToolTip(findings_->isEmpty() ? findings_->emptyWords() : QString());
  findingsArea_->setVisible(!findings_->isEmpty());
  shareHeight();
}

void MarginPanel::showTotals() {
  const Totals totals = totalsOf(document_.yard());
  totals_->setVisible(document_.isOpen());
  totals_->setText(tr("%1 · %2 species · %3 % of the ground taken")
                       .arg(plantCountText(totals))
                       .arg(totals.species)
                       .arg(qRound(totals.share() * 100.0)));
}

// Until someone moves the line between them: findings keep their first one with its buttons, but
// leave what is selected its foot and some lines; a sheet of a plant gets as much as it can, and
// the score of a bed all but their heading.
int MarginPanel::heightForFindings() const {
  const int both = halves_->height();
  if (findings_->isEmpty()) return head_->sizeHint().height();
  if (lowerByHand_) return *lowerByHand_;
  if (upper_->currentIndex() != 0) return std::max(kLeastBesideSheet, both - kSheet);
  if (selection_->readsScore()) return kLeastBesideSheet;
  int lower =
      std::max(std::min(kLeastFindings, int(both * kMostOfAll)), int(both * kFindingsShare));
  if (!findings_->hasOpen())  // the accepted are a click away, under their line
    lower = std::min(lower, head_->sizeHint().height() + findings_->sizeHint().height());
  const QWidget* foot = selection_->foot();
  if (foot->isHidden()) return lower;
  const int most = both - foot->heightForWidth(width()) - kLeastAboveFoot;
  return std::clamp(most, std::min(kLeastBesideSheet, lower), lower);
}

void MarginPanel::shareHeight() {
  const int lower = heightForFindings();
  lower_->setMaximumHeight(findings_->isEmpty() ? lower : QWIDGETSIZE_MAX);
  halves_->setSizes({halves_->height() - lower, lower});
}

void MarginPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  shareHeight();
}

// The foot grows with what it has to say, once that is laid out.
bool MarginPanel::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::LayoutRequest)
    QMetaObject::invokeMethod(this, &MarginPanel::shareHeight, Qt::QueuedConnection);
  return QWidget::eventFilter(watched, event);
}

void MarginPanel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Theme& theme = currentTheme();
  painter.fillRect(rect(), theme.panel);
  painter.fillRect(QRect(0, 0, 1, height()), theme.line);
  if (totals_->isVisible()) painter.fillRect(QRect(0, totals_->y(), width(), 1), theme.line);
}

}  // namespace tussock
