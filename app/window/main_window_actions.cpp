// SPDX-License-Identifier: MIT
// What the menus of the window do.
#include <QActionGroup>
#include <QApplication>

#include "app/canvas/canvas.h"
#include "app/document/edit_order.h"
#include "app/document/filling.h"
#include "app/look/motion.h"
#include "app/look/theme.h"
#include "app/panels/bench_panel.h"
#include "app/panels/card_strip.h"
#include "app/panels/fault_report.h"
#include "app/panels/margin_panel.h"
#include "app/panels/selection.h"
#include "app/panels/sun_strip.h"
#include "app/window/actions.h"
#include "app/window/drift_commands.h"
#include "app/window/key_list.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/plan_commands.h"
#include "app/window/plant_commands.h"
#include "app/window/start_page.h"
#include "app/window/tool_set.h"

namespace tussock {

void MainWindow::wireFileActions() {
  const auto lay = [this] {
    const Box seen = canvas_->mapping().visible();
    commands_->bringInAsked(seen.centre(), seen.width() * 0.7);
  };
  connect(actions_->newYard, &QAction::triggered, &document_, &Document::close);
  connect(actions_->closeYard, &QAction::triggered, &document_, &Document::close);
  connect(actions_->open, &QAction::triggered, commands_, &YardCommands::openAsked);
  connect(actions_->saveCopy, &QAction::triggered, this, [this] {
    finishEdits();
    commands_->saveCopy();
  });
  connect(actions_->example, &QAction::triggered, commands_, &YardCommands::startExample);
  connect(start_, &StartPage::exampleWanted, commands_, &YardCommands::startExample);
  connect(actions_->importSite, &QAction::triggered, commands_, &YardCommands::importSite);
  connect(actions_->exportSite, &QAction::triggered, commands_, &YardCommands::exportSite);
  connect(actions_->plan, &QAction::triggered, planCommands_, &PlanCommands::writePlan);
  connect(actions_->print, &QAction::triggered, planCommands_, &PlanCommands::print);
  connect(actions_->photo, &QAction::triggered, this, lay);
  connect(actions_->quit, &QAction::triggered, this, &QWidget::close);
  connect(actions_->keys, &QAction::triggered, keyList_, &KeyList::bringUp);
  connect(actions_->about, &QAction::triggered, this, [this] { prompts_->tellAbout(); });
  connect(start_, &StartPage::newYardWanted, commands_, &YardCommands::startNew);
  connect(start_, &StartPage::openWanted, commands_, &YardCommands::openAsked);
  connect(start_, &StartPage::recentWanted, commands_, &YardCommands::open);
}

void MainWindow::wireEditActions() {
  connect(actions_->undo, &QAction::triggered, this, [this] {
    finishEdits();
    order_->undo();
  });
  connect(actions_->redo, &QAction::triggered, this, [this] {
    finishEdits();
    order_->redo();
  });
  connect(actions_->remove, &QAction::triggered, this, [this] {
    if (!toolSet_->select().deleteCorner()) toolSet_->select().deleteSelection();
  });
  connect(actions_->selectAll, &QAction::triggered, this, [this] {
    std::vector<ObjectRef> drifts;
    for (const Drift& drift : document_.yard().drifts) drifts.push_back(refTo(drift.id));
    document_.select(std::move(drifts));
  });
  connect(tools_, &QActionGroup::triggered, this,
          [this](QAction* action) { takeTool(action->objectName()); });
}

void MainWindow::wireDriftActions() {
  const auto run = [this](QAction* action, void (DriftCommands::*command)()) {
    connect(action, &QAction::triggered, this, [this, command] {
      finishEdits();
      (driftCommands_->*command)();
    });
  };
  run(actions_->merge, &DriftCommands::merge);
  run(actions_->setOut, &DriftCommands::setOutAnew);
  run(actions_->settle, &DriftCommands::settle);
  run(actions_->lock, &DriftCommands::lockOrUnlock);
}

void MainWindow::wireLookActions() {
  connect(actions_->fit, &QAction::triggered, canvas_, &Canvas::fit);
  connect(actions_->zoomIn, &QAction::triggered, canvas_, &Canvas::zoomIn);
  connect(actions_->zoomOut, &QAction::triggered, canvas_, &Canvas::zoomOut);
  const auto sunAction = [this](QAction* action, SunLook look) {
    connect(action, &QAction::triggered, this, [this, look] { sunStrip_->toggle(look); });
    connect(&canvas_->sunView(), &SunView::choiceChanged, action,
            [this, action, look] { action->setChecked(canvas_->sunView().choice().look == look); });
  };
  sunAction(actions_->sun, SunLook::Hours);
  sunAction(actions_->shadows, SunLook::Shadows);
  wireMotion();
  connect(actions_->names, &QAction::toggled, canvas_, &Canvas::setAllNames);
  connect(actions_->suits, &QAction::triggered, this, [this] {
    if (pointer_) return bench_->askAt(*pointer_);
    messages_->tell(tr("Rest the pointer on the place to ask about, then press %1.")
                        .arg(actions_->suits->shortcut().toString(QKeySequence::NativeText)));
  });
  connect(actions_->toSelection, &QAction::triggered, this, [this] {
    Box box;
    for (const ObjectRef ref : document_.selection())
      if (const Item* item = canvas_->scene().find(ref)) box.include(item->bounds());
    if (!box.empty()) canvas_->showBox(box.grown(0.5));
  });
  connect(&actions_->themes, &QActionGroup::triggered, this, [this](QAction* action) {
    settings_.setValue(QStringLiteral("theme"), action->data().toInt());
    showTheme(ThemeChoice(action->data().toInt()));
  });
  connect(&actions_->units, &QActionGroup::triggered, this,
          [this](QAction* action) { commands_->setUnits(UnitSystem(action->data().toInt())); });
}

void MainWindow::wireMotion() {
  const QString key = QStringLiteral("lessMotion");
  connect(actions_->lessMotion, &QAction::toggled, this, [this, key](bool less) {
    settings_.setValue(key, less);
    chooseMotion(less ? MotionChoice::Less : MotionChoice::System);
    sunStrip_->takeMotion();
  });
  chooseMotion(MotionChoice::System);
  actions_->lessMotion->setChecked(settings_.value(key, false).toBool());
}

// Paper and scale of the plan belong to whoever prints, not to the yard.
void MainWindow::wirePlanChoices() {
  const auto keep = [this](QActionGroup& group, const QString& key, int usual, auto take) {
    const int kept = settings_.value(key, usual).toInt();
    for (QAction* action : group.actions()) action->setChecked(action->data().toInt() == kept);
    take(kept);
    connect(&group, &QActionGroup::triggered, this, [this, key, take](QAction* action) {
      settings_.setValue(key, action->data());
      take(action->data().toInt());
    });
  };
  keep(actions_->papers, QStringLiteral("planPaper"), -1, [this](int paper) {
    planCommands_->setPaper(paper < 0 ? std::nullopt : std::optional(Paper(paper)));
  });
  keep(actions_->scales, QStringLiteral("planScale"), 0, [this](int scale) {
    planCommands_->setBedScale(scale == 0 ? std::nullopt : std::optional(scale));
  });
}

void MainWindow::wirePlants() {
  plantCommands_->setPrompts(prompts_.get());
  connect(plantCommands_, &PlantCommands::told, messages_, &MessageBar::tell);
  connect(bench_, &BenchPanel::pointAsked, canvas_, &Canvas::markPoint);
  connect(bench_, &BenchPanel::factsWanted, margin_, &MarginPanel::showPlant);
  connect(actions_->plantFacts, &QAction::triggered, this, &MainWindow::showPlantAtHand);
  connect(actions_->plantList, &QAction::triggered, bench_, &BenchPanel::showList);
  connect(margin_, &MarginPanel::listWanted, bench_, [this] { bench_->showList(true); });
  connect(margin_, &MarginPanel::compareWanted, bench_, &BenchPanel::showArrangements);
  connect(bench_, &BenchPanel::listShown, actions_->plantList, &QAction::setChecked);
  connect(actions_->fillBed, &QAction::triggered, this, [this] {
    if (const Bed* bed = bedOfSelection(document_.yard(), document_.selection()))
      margin_->filling().fillWhole(bed->id);
  });
  Filling& filling = margin_->filling();
  connect(actions_->keepFilling, &QAction::triggered, &filling, &Filling::keep);
  const auto follow = [this, &filling] { actions_->keepFilling->setEnabled(filling.canKeep()); };
  connect(&filling, &Filling::started, actions_->keepFilling, follow);
  connect(&filling, &Filling::progressed, actions_->keepFilling, follow);
  connect(&filling, &Filling::ended, actions_->keepFilling, follow);
  connect(actions_->plantAdd, &QAction::triggered, margin_, &MarginPanel::startPlant);
  connect(actions_->plantsIn, &QAction::triggered, plantCommands_, &PlantCommands::bringIn);
  connect(plantCommands_, &PlantCommands::faultsFound, margin_, &MarginPanel::takeFaults);
  connect(plantCommands_, &PlantCommands::faultsFound, actions_->plantFaults,
          [this] { actions_->plantFaults->setEnabled(true); });
  connect(actions_->plantFaults, &QAction::triggered, margin_, &MarginPanel::showFaults);
  connect(margin_->faults(), &FaultReport::saveWanted, this,
          [this] { plantCommands_->writeFaults(margin_->faults()->faults()); });
  connect(actions_->ownPlantsOut, &QAction::triggered, plantCommands_, &PlantCommands::writeOwn);
  connect(actions_->allPlantsOut, &QAction::triggered, plantCommands_, &PlantCommands::writeAll);
}

void MainWindow::loadOwnPlants() {
  plantCommands_->load();
}

// The species of the card that was pressed last, else of the drift selected, else of the card on
// the bench.
void MainWindow::showPlantAtHand() {
  const Species* card = bench_->cards()->current();
  if (card && bench_->cards()->hasFocus())
    return margin_->showPlant(QString::fromStdString(card->botanicalName));
  for (const ObjectRef ref : document_.selection())
    if (const auto id = idIf<Drift>(ref))
      if (const Drift* drift = document_.yard().drifts.find(*id))
        return margin_->showPlant(QString::fromStdString(drift->species));
  if (card) margin_->showPlant(QString::fromStdString(card->botanicalName));
}

void MainWindow::showTheme(ThemeChoice choice) {
  for (QAction* action : actions_->themes.actions())
    action->setChecked(action->data().toInt() == int(choice));
  applyTheme(*qApp, themeFor(choice, system_));
  if (!canvas_) return;
  canvas_->takeTheme();
  for (QWidget* widget : findChildren<QWidget*>()) widget->update();
}

}  // namespace tussock
