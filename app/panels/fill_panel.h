// SPDX-License-Identifier: MIT
// What the selected bed is filled from and what came of it: its plant list and figures, the score
// rule by rule, and the arrangements kept. The buttons that fill stand in the bar under it.
#pragma once

#include <QWidget>

#include "app/document/filling.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class ArrangementsView;
class FiguresView;
class PlantListView;
class ScoreView;

class FillPanel : public QWidget {
  Q_OBJECT

 public:
  FillPanel(Document& document, Filling& filling, Id<Bed> bed, QWidget* parent = nullptr);

  void refresh();
  void openScore();  // and brings it into view
  [[nodiscard]] bool scoreOpen() const;
  void keep();  // the arrangement on the ground, ready to be named

 signals:
  void scoreToggled();
  void listWanted();     // with its figures beside it, where there is room
  void compareWanted();  // two arrangements of the bed side by side

 private:
  void addList(QVBoxLayout* column);
  void addResults(QVBoxLayout* column);
  [[nodiscard]] QWidget* makeArrangementsHead();
  void propose();
  void showScore();
  [[nodiscard]] const Bed* bed() const;

  Document& document_;
  Filling& filling_;
  Id<Bed> bed_;
  PlantListView* list_ = nullptr;
  FiguresView* figures_ = nullptr;
  QPushButton* propose_ = nullptr;
  QPushButton* scoreHead_ = nullptr;
  ScoreView* score_ = nullptr;
  QLabel* published_ = nullptr;
  QWidget* arrangementsHead_ = nullptr;
  QPushButton* compare_ = nullptr;
  ArrangementsView* arrangements_ = nullptr;
};

}  // namespace tussock
