// SPDX-License-Identifier: MIT
// Puts the parts of the window together and wires them; the work is done in the parts.
#pragma once

#include <memory>
#include <QMainWindow>
#include <QPalette>
#include <QSettings>

#include "app/document/document.h"
#include "app/window/recent_files.h"
#include "app/window/yard_commands.h"

class QActionGroup;
class QStackedWidget;

namespace tussock {

class Actions;
class BenchPanel;
class Canvas;
class DriftCommands;
class DriftInHand;
class EditOrder;
class FirstSteps;
class KeyList;
class MarginPanel;
class MessageBar;
class PlanCommands;
class PlantCommands;
class StartPage;
class StatusLine;
class SunStrip;
class ToolSet;
class WaysBar;
class YearPanel;
enum class ThemeChoice;

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(Document& document, QWidget* parent = nullptr);
  ~MainWindow() override;

  [[nodiscard]] Canvas& canvas() const { return *canvas_; }
  [[nodiscard]] YardCommands& commands() const { return *commands_; }
  [[nodiscard]] DriftInHand& driftInHand() const { return *inHand_; }
  [[nodiscard]] MessageBar& messages() const { return *messages_; }
  // Reads the plants of the user's own that hold in every yard.
  void loadOwnPlants();
  void usePrompts(std::unique_ptr<Prompts> prompts);

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  QWidget* makePages();
  QWidget* makeWorkplace();
  QWidget* makeMiddle();
  QWidget* makeDrawing();
  void wireDocument();
  void wireCanvas();
  void wirePanels();
  void wireFileActions();
  void wireEditActions();
  void wireLookActions();
  void wireMotion();
  void wireDriftActions();
  void wirePlanChoices();
  void wirePlants();
  void showPlantAtHand();
  void takeTool(const QString& name);
  void showYard();
  void followDocument();
  void showFirstSteps();
  void showTheme(ThemeChoice choice);
  void showFinding(const Finding& finding);
  void finishEdits();  // those that wait for more keys

  Document& document_;
  std::optional<Point> pointer_;  // over the drawing
  QSettings settings_;
  RecentFiles recent_;
  QPalette system_;
  std::unique_ptr<Prompts> prompts_;
  YardCommands* commands_;
  DriftCommands* driftCommands_;
  PlanCommands* planCommands_;
  PlantCommands* plantCommands_ = nullptr;
  EditOrder* order_ = nullptr;
  Actions* actions_;
  QActionGroup* tools_;
  QStackedWidget* pages_ = nullptr;
  StartPage* start_ = nullptr;
  Canvas* canvas_ = nullptr;
  std::unique_ptr<ToolSet> toolSet_;
  WaysBar* ways_ = nullptr;
  FirstSteps* firstSteps_ = nullptr;
  KeyList* keyList_ = nullptr;
  MessageBar* messages_ = nullptr;
  StatusLine* status_ = nullptr;
  SunStrip* sunStrip_ = nullptr;
  DriftInHand* inHand_ = nullptr;
  BenchPanel* bench_ = nullptr;
  MarginPanel* margin_ = nullptr;
  YearPanel* year_ = nullptr;
};

}  // namespace tussock
