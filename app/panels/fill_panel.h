// SPDX-License-Identifier: MIT
// Filling the selected bed: its plant list, formal or natural, the buttons that fill, what the
// filling had to say, the score rule by rule, and the arrangements kept.
#pragma once

#include <map>
#include <QPointer>
#include <QWidget>

#include "app/document/filling.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class ArrangementsView;
class FieldForm;
class FiguresView;
class PlantListView;
class ScoreView;

class FillPanel : public QWidget {
  Q_OBJECT

 public:
  FillPanel(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent = nullptr);

  void refresh();

 signals:
  void listWanted();     // with its figures beside it, where there is room
  void compareWanted();  // two arrangements of the bed side by side

 private:
  enum class Next { SameSeed, NextSeed };
  void addList(QVBoxLayout* column);
  void addManner(QVBoxLayout* column);
  void addButtons(QVBoxLayout* column);
  void addNotes(QVBoxLayout* column);
  void addResults(QVBoxLayout* column);
  [[nodiscard]] QPushButton* speciesButton();
  [[nodiscard]] QWidget* makeArrangementsHead();
  [[nodiscard]] std::map<QString, std::string> speciesPlanted() const;
  void refill(const std::string& species);
  void fill(FillWhat what, Next next);
  void propose();
  void showRunning();
  void swapButtons(bool running);
  void showNotes();
  void showScore();
  [[nodiscard]] const Bed* bed() const;

  Document& document_;
  Filling& filling_;
  Id<Bed> bed_;
  PlantListView* list_ = nullptr;
  FiguresView* figures_ = nullptr;
  FieldForm* manner_ = nullptr;
  QPushButton* propose_ = nullptr;
  QWidget* buttons_ = nullptr;
  QPushButton* species_ = nullptr;
  QWidget* running_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QPushButton* stop_ = nullptr;
  QPointer<QWidget> pressed_;  // the button that started the filling, if it had the focus
  QLabel* notes_ = nullptr;
  QPushButton* scoreHead_ = nullptr;
  ScoreView* score_ = nullptr;
  QLabel* published_ = nullptr;
  QWidget* arrangementsHead_ = nullptr;
  QPushButton* compare_ = nullptr;
  ArrangementsView* arrangements_ = nullptr;
};

}  // namespace tussock
