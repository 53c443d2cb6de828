// SPDX-License-Identifier: MIT
#include "app/window/actions.h"

#include <QMenuBar>

#include "app/look/icons.h"
#include "app/look/theme.h"
#include "core/sheets/plan.h"
#include "core/sheets/scale.h"
#include "core/units/measure_text.h"

namespace tussock {

Actions::Actions(QObject* parent)
    : QObject(parent),
      newYard(make("actionNew", tr("&New yard"), QKeySequence::New, "new")),
      open(make("actionOpen", tr("&Open…"), QKeySequence::Open, "open")),
      example(make("actionExample", tr("Open the &example"))),
      saveCopy(
          make("actionSaveCopy", tr("Save a &copy…"), QKeySequence(tr("Ctrl+Shift+S")), "save")),
      closeYard(make("actionClose", tr("C&lose yard"), QKeySequence::Close)),
      importSite(make("actionImport", tr("&Import a site…"))),
      exportSite(make("actionExport", tr("E&xport the site…"))),
      photo(make("actionPhoto", tr("Bring in a p&hoto…"), QKeySequence(tr("Ctrl+I")), "photo")),
      plan(make("actionPlan", tr("Planting plan as PDF or &SVG…"), QKeySequence(tr("Ctrl+E")))),
      print(make("actionPrint", tr("&Print the planting plan…"), QKeySequence::Print, "print")),
      quit(make("actionQuit", tr("&Quit"), QKeySequence::Quit)),
      undo(make("actionUndo", tr("&Undo"), QKeySequence::Undo, "undo")),
      redo(make("actionRedo", tr("&Redo"), QKeySequence::Redo, "redo")),
      remove(make("actionDelete", tr("&Delete"), {}, "delete")),
      selectAll(make("actionSelectAll", tr("Select &all plants"), QKeySequence::SelectAll)),
      fillBed(make("actionFillBed", tr("&Fill the bed"), QKeySequence(tr("Ctrl+B")))),
      keepFilling(make("actionKeepFilling", tr("Stop filling and &keep what stands"),
                       QKeySequence(tr("Ctrl+Shift+B")))),
      merge(make("actionMerge", tr("&Merge two drifts"), QKeySequence(tr("Ctrl+J")))),
      setOut(make("actionSetOut", tr("Set out &anew"), QKeySequence(tr("Ctrl+D")))),
      settle(
          make("actionSettle", tr("&Settle plants that break a rule"), QKeySequence(tr("Ctrl+T")))),
      lock(make("actionLock", tr("&Lock or unlock"), QKeySequence(tr("K")), "lock")),
      plantFacts(make("actionPlantFacts", tr("&Facts of the plant"), QKeySequence(tr("I")))),
      plantAdd(make("actionPlantAdd", tr("&Add a plant of your own"))),
      plantList(
          make("actionPlantList", tr("Plant &list with its figures"), QKeySequence(tr("Shift+B")))),
      plantsIn(make("actionPlantsIn", tr("&Bring in plants…"))),
      plantFaults(make("actionPlantFaults", tr("What could &not be used"))),
      ownPlantsOut(make("actionOwnPlantsOut", tr("&Write out your own plants…"))),
      allPlantsOut(make("actionAllPlantsOut", tr("Write &out all plants…"))),
      fit(make("actionFit", tr("Show the &whole yard"), QKeySequence(tr("F")), "fit")),
      zoomIn(make("actionZoomIn", tr("Zoom &in"), QKeySequence::ZoomIn, "plus")),
      zoomOut(make("actionZoomOut", tr("Zoom &out"), QKeySequence::ZoomOut, "minus")),
      toSelection(
          make("actionToSelection", tr("Show the &selection"), QKeySequence(tr("Shift+F")))),
      sun(make("actionSun", tr("&Hours of sun"), QKeySequence(tr("U")), "sun")),
      shadows(make("actionShadows", tr("Sha&dows at a time"), QKeySequence(tr("Shift+U")))),
      names(make("actionNames", tr("All &names"), QKeySequence(tr("N")))),
      suits(make("actionSuits", tr("What suits the &place under the pointer"),
                 QKeySequence(tr("Q")))),
      lessMotion(make("actionLessMotion", tr("Less &motion"))),
      papers(this),
      scales(this),
      themes(this),
      units(this),
      keys(make("actionKeys", tr("&Keys and gestures"), QKeySequence::HelpContents)),
      about(make("actionAbout", tr("&About Tussock"))) {
  for (const QKeySequence& known : {QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))})
    if (!redo->shortcuts().contains(known)) redo->setShortcuts(redo->shortcuts() << known);
  keepFilling->setEnabled(false);  // until there is something
  plantFaults->setEnabled(false);
  plantList->setCheckable(true);
  sun->setCheckable(true);
  shadows->setCheckable(true);
  names->setCheckable(true);
  lessMotion->setCheckable(true);
  addPlanChoices();
  addChoice(themes, "actionThemeSystem", tr("As the &system"), int(ThemeChoice::System));
  addChoice(themes, "actionThemeLight", tr("&Light"), int(ThemeChoice::Light));
  addChoice(themes, "actionThemeDark", tr("&Dark"), int(ThemeChoice::Dark));
  addChoice(units, "actionUnitsFeet", tr("&Feet and inches"), int(UnitSystem::FeetInches));
  addChoice(units, "actionUnitsMetres", tr("&Metres"), int(UnitSystem::Metres));
}

void Actions::addPlanChoices() {
  addChoice(papers, "actionPaperUsual", tr("As the &units go"), -1);
  addChoice(papers, "actionPaperLetter", tr("&Letter"), int(Paper::Letter));
  addChoice(papers, "actionPaperA4", tr("&A4"), int(Paper::A4));
  addChoice(scales, "actionScaleFits", tr("The largest that &fits"), 0);
  for (const UnitSystem system : {UnitSystem::FeetInches, UnitSystem::Metres})
    for (const int scale : bedScales(system)) {
      const QString name = QStringLiteral("actionScale%1").arg(scale);
      if (findChild<QAction*>(name)) continue;  // one scale may serve feet and metres
      addChoice(scales, qPrintable(name), QString::fromStdString(describeScale(scale, system)),
                scale);
    }
}

QAction* Actions::make(const char* name, const QString& text, const QKeySequence& key,
                       const char* iconName) {
  auto* action = new QAction(text, this);
  action->setObjectName(QString::fromLatin1(name));
  action->setShortcut(key);
  if (iconName) action->setIcon(icon(QString::fromLatin1(iconName)));
  return action;
}

void Actions::addChoice(QActionGroup& group, const char* name, const QString& text, int value) {
  QAction* action = make(name, text);
  action->setCheckable(true);
  action->setData(value);
  group.addAction(action);
}

void Actions::fill(QMenuBar& bar, QActionGroup& tools) {
  QMenu* yard = bar.addMenu(tr("&Yard"));
  yard->addActions({newYard, open, example, saveCopy, closeYard});
  yard->addSeparator();
  yard->addActions({photo, importSite, exportSite});
  yard->addSeparator();
  yard->addActions({plan, print});
  yard->addMenu(tr("Plan's p&aper"))->addActions(papers.actions());
  yard->addMenu(tr("Plan's sca&le"))->addActions(scales.actions());
  yard->addSeparator();
  yard->addAction(quit);
  bar.addMenu(tr("&Edit"))->addActions({undo, redo, remove, selectAll});
  bar.addMenu(tr("Dri&ft"))->addActions({fillBed, keepFilling, merge, setOut, settle, lock});
  QMenu* plants = bar.addMenu(tr("&Plants"));
  plants->addActions({plantFacts, plantAdd, plantList});
  plants->addSeparator();
  plants->addActions({plantsIn, plantFaults, ownPlantsOut, allPlantsOut});
  bar.addMenu(tr("&Draw"))->addActions(tools.actions());
  QMenu* look = bar.addMenu(tr("&Look"));
  look->addActions({fit, toSelection, zoomIn, zoomOut});
  look->addSeparator();
  look->addActions({sun, shadows, names, suits});
  look->addSeparator();
  look->addMenu(tr("&Colours"))->addActions(themes.actions());
  look->addMenu(tr("&Units"))->addActions(units.actions());
  look->addAction(lessMotion);
  bar.addMenu(tr("&Help"))->addActions({keys, about});
}

}  // namespace tussock
