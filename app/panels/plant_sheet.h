// SPDX-License-Identifier: MIT
// All that is known of one plant, each value with where it is from and in a field to write the
// user's own over it; or an empty sheet for a new plant.
#pragma once

#include <QWidget>

#include "app/panels/plant_desk.h"

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class PlantFields;

class PlantSheet : public QWidget {
  Q_OBJECT

 public:
  PlantSheet(Document& document, PersonalCatalogue& personal, QWidget* parent = nullptr);

  void showPlant(const std::string& name);
  void startNew();
  void putAway();
  [[nodiscard]] bool isEmpty() const { return !desk_.writing() && desk_.name().empty(); }

 signals:
  void left();  // back to what is selected

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void addHead(QVBoxLayout* column);
  QLayout* makeNames();
  QComboBox* makeScope(QWidget* parent);
  void addActions(QVBoxLayout* column);
  void begin(PlantCells cells);
  void rebuild();
  void refresh();
  void followEdit();
  void refreshHead();
  void showPicture(const Species* species);
  void keep();
  void say(const QString& words);

  Document& document_;
  PlantDesk desk_;
  QLabel* picture_ = nullptr;
  QLabel* botanical_ = nullptr;
  QLabel* common_ = nullptr;
  QComboBox* scope_ = nullptr;
  QLabel* said_ = nullptr;
  PlantFields* fields_ = nullptr;
  QVBoxLayout* fieldsColumn_ = nullptr;
  QPushButton* keep_ = nullptr;
  QPushButton* copy_ = nullptr;
  QPushButton* clear_ = nullptr;
};

}  // namespace tussock
