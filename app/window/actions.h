// SPDX-License-Identifier: MIT
// Every command of the menus, by object name, with its key. What they do is wired in the window.
#pragma once

#include <QAction>
#include <QActionGroup>
#include <QObject>

class QMenuBar;

namespace tussock {

class Document;
class EditOrder;

class Actions : public QObject {
  Q_OBJECT

 public:
  explicit Actions(QObject* parent = nullptr);
  void fill(QMenuBar& bar, QActionGroup& tools);

  QAction* newYard;
  QAction* open;
  QAction* example;
  QAction* saveCopy;
  QAction* closeYard;
  QAction* importSite;
  QAction* exportSite;
  QAction* photo;
  QAction* plan;
  QAction* print;
  QAction* quit;
  QAction* undo;
  QAction* redo;
  QAction* remove;
  QAction* selectAll;
  QAction* fillBed;
  QAction* keepFilling;
  QAction* merge;
  QAction* setOut;
  QAction* settle;
  QAction* lock;
  QAction* plantFacts;
  QAction* plantAdd;
  QAction* plantList;
  QAction* plantsIn;
  QAction* plantFaults;
  QAction* ownPlantsOut;
  QAction* allPlantsOut;
  QAction* fit;
  QAction* zoomIn;
  QAction* zoomOut;
  QAction* toSelection;
  QAction* sun;
  QAction* shadows;
  QAction* names;
  QAction* suits;
  QAction* lessMotion;
  QActionGroup papers;  // data: Paper, or -1 for the one that goes with the units
  QActionGroup scales;  // data: 24 for 1:24, or 0 for the one that fits
  QActionGroup themes;  // data: ThemeChoice
  QActionGroup units;   // data: UnitSystem
  QAction* keys;
  QAction* about;

  // Enables what can be done with the yard and selection at hand, and names what undo takes back.
  void follow(const Document& document, const EditOrder& order);

 private:
  QAction* make(const char* name, const QString& text, const QKeySequence& key = {},
                const char* iconName = nullptr);
  void addPlanChoices();
  void nameUndo(const EditOrder& order);
  void addChoice(QActionGroup& group, const char* name, const QString& text, int value);
};

}  // namespace tussock
