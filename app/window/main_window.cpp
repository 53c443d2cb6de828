// SPDX-License-Identifier: MIT
#include "app/window/main_window.h"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/canvas/canvas.h"
#include "app/document/edit_order.h"
#include "app/document/filling.h"
#include "app/document/sun_survey.h"
#include "app/look/theme.h"
#include "app/panels/bench_panel.h"
#include "app/panels/margin_panel.h"
#include "app/panels/sun_strip.h"
#include "app/panels/year_panel.h"
#include "app/tools/drift_in_hand.h"
#include "app/window/actions.h"
#include "app/window/day_shown.h"
#include "app/window/drift_commands.h"
#include "app/window/escape_stops.h"
#include "app/window/first_steps.h"
#include "app/window/key_list.h"
#include "app/window/message_bar.h"
#include "app/window/pages_scroll.h"
#include "app/window/plan_commands.h"
#include "app/window/plant_commands.h"
#include "app/window/rail.h"
#include "app/window/start_page.h"
#include "app/window/status_line.h"
#include "app/window/tool_set.h"
#include "app/window/ways_bar.h"
#include "core/checks/shown_place.h"

namespace tussock {

namespace {
constexpr QSize kFirstSize{1440, 900};
constexpr int kTitleBar = 32;  // pixels that a window manager is likely to put on top

QSize firstSizeOn(const QScreen* screen) {
  if (!screen) return kFirstSize;
  return kFirstSize.boundedTo(screen->availableSize() - QSize(0, kTitleBar));
}
}  // namespace

MainWindow::MainWindow(Document& document, QWidget* parent)
    : QMainWindow(parent),
      document_(document),
      settings_(QStringLiteral("tussock"), QStringLiteral("tussock")),
      recent_(settings_),
      system_(QApplication::palette()),
      commands_(new YardCommands(document, recent_, this)),
      driftCommands_(new DriftCommands(document, this)),
      planCommands_(new PlanCommands(document, this)),
      actions_(new Actions(this)),
      tools_(new QActionGroup(this)) {
  setObjectName(QStringLiteral("mainWindow"));
  usePrompts(std::make_unique<QtPrompts>(this));
  showTheme(ThemeChoice(settings_.value(QStringLiteral("theme")).toInt()));
  setCentralWidget(makePages());
  actions_->fill(*menuBar(), *tools_);
  firstSteps_ = new FirstSteps(*canvas_, *actions_, *tools_);
  keyList_ = new KeyList(*menuBar(), *toolSet_, this);
  wireDocument();
  wireCanvas();
  wirePanels();
  wireFileActions();
  wireEditActions();
  wireDriftActions();
  wireLookActions();
  wirePlanChoices();
  wirePlants();
  resize(firstSizeOn(screen()));
  restoreGeometry(settings_.value(QStringLiteral("geometry")).toByteArray());
  showYard();
}

MainWindow::~MainWindow() {
  canvas_->setTool(nullptr);
}

QWidget* MainWindow::makePages() {
  start_ = new StartPage;
  pages_ = new QStackedWidget;
  pages_->addWidget(start_);
  pages_->addWidget(makeWorkplace());
  messages_ = new MessageBar;
  messages_->floatOver(*start_);
  return new PagesScroll(pages_);
}

QWidget* MainWindow::makeWorkplace() {
  auto* place = new QWidget;
  auto* column = new QVBoxLayout(place);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  year_ = new YearPanel(document_);
  column->addWidget(year_);
  column->addWidget(makeMiddle(), 1);
  status_ = new StatusLine(document_, *order_, canvas_->sunView());
  column->addWidget(status_);
  return place;
}

// The rail reaches down beside the bench: a small screen then still holds every tool by name.
QWidget* MainWindow::makeMiddle() {
  QWidget* drawing = makeDrawing();
  auto* middle = new QWidget;
  auto* row = new QHBoxLayout(middle);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(new Rail(*toolSet_, *tools_));
  auto* column = new QVBoxLayout;
  column->setSpacing(0);
  column->addWidget(drawing, 1);
  bench_ = new BenchPanel(document_);
  column->addWidget(bench_);
  row->addLayout(column, 1);
  return middle;
}

QWidget* MainWindow::makeDrawing() {
  canvas_ = new Canvas(document_);
  toolSet_ = std::make_unique<ToolSet>(*canvas_);
  inHand_ = new DriftInHand(*canvas_, this);
  ways_ = new WaysBar(*canvas_, canvas_);
  sunStrip_ = new SunStrip(*canvas_);
  auto* drawing = new QWidget;
  auto* row = new QHBoxLayout(drawing);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(canvas_, 1);
  margin_ = new MarginPanel(document_);
  plantCommands_ = new PlantCommands(document_, margin_->personal(), this);
  order_ = new EditOrder(document_, margin_->personal(), this);
  row->addWidget(margin_);
  return drawing;
}

void MainWindow::usePrompts(std::unique_ptr<Prompts> prompts) {
  prompts_ = std::move(prompts);
  commands_->setPrompts(prompts_.get());
  planCommands_->setPrompts(prompts_.get());
  if (plantCommands_) plantCommands_->setPrompts(prompts_.get());
}

void MainWindow::wireDocument() {
  connect(&document_, &Document::opened, this, &MainWindow::showYard);
  connect(&document_, &Document::changed, this, &MainWindow::followDocument);
  connect(&document_, &Document::selectionChanged, this, &MainWindow::followDocument);
  connect(order_, &EditOrder::changed, this, &MainWindow::followDocument);
  connect(order_, &EditOrder::troubled, messages_, &MessageBar::tell);
  connect(&document_, &Document::notice, messages_, &MessageBar::tellNotice);
  connect(&document_, &Document::remark, messages_, &MessageBar::tell);
  connect(&document_, &Document::editFailed, messages_, &MessageBar::tell);
  connect(&document_, &Document::saved, messages_, &MessageBar::editMade);
}

void MainWindow::wireCanvas() {
  connect(canvas_, &Canvas::hintChanged, status_, &StatusLine::setHint);
  connect(canvas_, &Canvas::pointerMoved, status_, &StatusLine::setPointer);
  connect(canvas_, &Canvas::pointerLeft, status_, &StatusLine::clearPointer);
  connect(canvas_, &Canvas::pointerMoved, this, [this](Point at) { pointer_ = at; });
  connect(canvas_, &Canvas::pointerLeft, this, [this] { pointer_.reset(); });
  connect(canvas_, &Canvas::lengthDrawn, status_, &StatusLine::setLength);
  connect(canvas_, &Canvas::troubled, messages_, &MessageBar::tell);
  connect(canvas_, &Canvas::cancelled, messages_, &MessageBar::dismiss);
  connect(canvas_, &Canvas::cancelled, margin_, &MarginPanel::forgetRefused);
  connect(canvas_, &Canvas::escaped, this, [this] { takeTool(QStringLiteral("toolSelect")); });
  connect(canvas_, &Canvas::countStepped, this, [this](int direction) {
    if (inHand_->holding())
      inHand_->stepCount(direction);
    else
      toolSet_->select().stepCount(direction);
  });
  connect(canvas_, &Canvas::picturesDropped, this, [this](const QStringList& paths, Point at) {
    QString told;  // stays told although another picture could be laid
    for (const QString& path : paths) {
      commands_->bringIn(path, at, canvas_->mapping().visible().width() * 0.7);
      if (!messages_->words().isEmpty()) told = messages_->words();
    }
    if (!told.isEmpty()) messages_->tell(told);
  });
  connect(canvas_, &Canvas::findingMarkClicked, this, [this](const std::string& key) {
    const auto findings = document_.findings();
    if (!findings) return;
    for (const Finding& finding : *findings)
      if (keyOf(finding) == key) showFinding(finding);
  });
  connect(commands_, &YardCommands::troubled, messages_, &MessageBar::tell);
  connect(driftCommands_, &DriftCommands::told, messages_, &MessageBar::tell);
  connect(margin_, &MarginPanel::told, messages_, &MessageBar::tell);
  connect(planCommands_, &PlanCommands::written, status_, &StatusLine::setHint);
  connect(planCommands_, &PlanCommands::troubled, messages_, &MessageBar::tell);
  connect(commands_, &YardCommands::pictureLaid, this, [this] {
    canvas_->fit();
    takeTool(QStringLiteral("toolPhoto"));
  });
}

void MainWindow::wirePanels() {
  const auto onCanvas = [this](const QPoint& global) {
    return QPointF(canvas_->mapFromGlobal(global));
  };
  connect(bench_, &BenchPanel::speciesLifted, this, [this](const QString& name) {
    finishEdits();
    inHand_->lift(name);
  });
  connect(bench_, &BenchPanel::speciesCarried, this,
          [this, onCanvas](const QPoint& at, Qt::KeyboardModifiers modifiers) {
            inHand_->carry(onCanvas(at), modifiers);
          });
  connect(bench_, &BenchPanel::speciesDropped, this, [this, onCanvas](const QPoint& global) {
    const QPointF at = onCanvas(global);
    inHand_->drop(at);
    // The keys are meant for the drift now, and no more for the card it came from.
    if (canvas_->rect().contains(at.toPoint())) canvas_->setFocus();
  });
  connect(bench_, &BenchPanel::speciesPutBack, inHand_, &DriftInHand::putBack);
  connect(bench_, &BenchPanel::countStepped, inHand_, &DriftInHand::stepCount);
  connect(margin_, &MarginPanel::findingChosen, this, &MainWindow::showFinding);
  connect(margin_, &MarginPanel::settled, canvas_, [this] { canvas_->setFocus(); });
  connect(year_, &YearPanel::weekChanged, canvas_, &Canvas::setWeek);
  connect(year_, &YearPanel::weekChanged, margin_, &MarginPanel::setWeek);
  connect(&margin_->filling(), &Filling::bestChanged, canvas_, &Canvas::showGrowing);
  connect(sunStrip_, &SunStrip::readingWanted, this,
          [this] { takeTool(QStringLiteral("toolReading")); });
  connect(&margin_->survey(), &SunSurvey::changed, canvas_,
          [this] { canvas_->showReadings(margin_->survey().compared()); });
  connect(year_, &YearPanel::yearChanged, canvas_, &Canvas::setYear);
  connect(canvas_, &Canvas::previewed, margin_, &MarginPanel::preview);
  new EscapeStops(*canvas_, margin_->filling(), *this);
  new DayShown(canvas_->sunView(), *year_, this);
  canvas_->setWeek(year_->week());
  margin_->setWeek(year_->week());
  canvas_->setYear(year_->year());
  connect(inHand_, &DriftInHand::hint, status_, &StatusLine::setHint);
}

void MainWindow::showFinding(const Finding& finding) {
  takeTool(QStringLiteral("toolSelect"));
  document_.select(finding.subjects.empty() ? std::vector<ObjectRef>()
                                            : std::vector<ObjectRef>{finding.subjects.front()});
  canvas_->showPlace(shownPlace(finding, document_.yard()));
}

void MainWindow::takeTool(const QString& name) {
  for (QAction* action : tools_->actions())
    if (action->objectName() == name) action->setChecked(true);
  finishEdits();
  messages_->dismiss();
  Tool* tool = toolSet_->find(name);
  canvas_->setTool(tool);
  ways_->show(tool);
  showFirstSteps();
  canvas_->setFocus();
}

void MainWindow::finishEdits() {
  toolSet_->select().finishPending();
}

void MainWindow::showYard() {
  const bool open = document_.isOpen();
  open ? messages_->floatOver(*canvas_, ways_) : messages_->floatOver(*start_);
  start_->showRecent(recent_.paths());
  pages_->setCurrentIndex(open ? 1 : 0);
  const QString name = QString::fromStdString(document_.yard().settings.name);
  setWindowTitle(open ? tr("%1 – Tussock").arg(name) : tr("Tussock"));
  setWindowFilePath(document_.path());
  takeTool(QStringLiteral("toolSelect"));
  followDocument();
}

void MainWindow::followDocument() {
  actions_->follow(document_, *order_);
  const bool writable = document_.isOpen() && !document_.isReadOnly();
  for (const ToolEntry& entry : toolSet_->entries())
    for (QAction* action : tools_->actions())
      if (action->objectName() == entry.name)
        action->setEnabled(document_.isOpen() && (writable || entry.tool->onlyLooks()));
  showFirstSteps();
}

void MainWindow::showFirstSteps() {
  const bool nothing = document_.isOpen() && boundsOf(document_.yard()).empty();
  firstSteps_->setVisible(nothing && !document_.isReadOnly() &&
                          canvas_->tool() == &toolSet_->select());
}

void MainWindow::closeEvent(QCloseEvent* event) {
  finishEdits();
  settings_.setValue(QStringLiteral("geometry"), saveGeometry());
  event->accept();
}

}  // namespace tussock
