// SPDX-License-Identifier: MIT
// All that is known of one plant, each value with where it is from and in a field to write the
// user's own over it; or an empty sheet for a new plant.
#pragma once

#include <QWidget>
#include <vector>

#include "app/panels/plant_desk.h"

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class InlineField;
struct PlantColumn;

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

 private:
  struct Field {
    std::string column;
    InlineField* field = nullptr;
    QLabel* note = nullptr;
  };
  void addHead(QVBoxLayout* column);
  void addActions(QVBoxLayout* column);
  QWidget* makeGroup(const QString& title, const std::vector<PlantColumn>& columns);
  void addField(QWidget* box, const PlantColumn& column);
  void begin(PlantCells cells);
  void rebuild();
  void refresh();
  void refreshHead();
  void keep();
  void say(const QString& words);
  [[nodiscard]] QString noteFor(const PlantValue& value) const;

  Document& document_;
  PlantDesk desk_;
  QLabel* botanical_ = nullptr;
  QLabel* common_ = nullptr;
  QComboBox* scope_ = nullptr;
  QLabel* said_ = nullptr;
  QWidget* fieldsBox_ = nullptr;
  QVBoxLayout* fieldsColumn_ = nullptr;
  QPushButton* keep_ = nullptr;
  QPushButton* copy_ = nullptr;
  QPushButton* clear_ = nullptr;
  std::vector<Field> fields_;
};

}  // namespace tussock
