// SPDX-License-Identifier: MIT
// A field for every value of the plant on the desk, in groups, each with where it is from.
#pragma once

#include <QWidget>
#include <vector>

#include "app/panels/plant_desk.h"

class QLabel;

namespace tussock {

class InlineEdit;
struct PlantColumn;

class PlantFields : public QWidget {
  Q_OBJECT

 public:
  // Editable or not; for the plant that lies on the desk now.
  PlantFields(PlantDesk& desk, bool editable, QWidget* parent = nullptr);

  void refresh();
  void startTyping();    // in the first field
  void forgetRefused();  // values that could not be taken

 private:
  struct Field {
    std::string column;
    InlineEdit* field = nullptr;
    QLabel* note = nullptr;
  };
  QWidget* makeGroup(const QString& title, const std::vector<PlantColumn>& columns);
  void addField(QWidget* box, const PlantColumn& column);
  [[nodiscard]] InlineEdit* makeField(QWidget* box, const PlantColumn& column);
  [[nodiscard]] QString sourceFor(const PlantValue& value) const;
  [[nodiscard]] QString noteFor(const PlantValue& value) const;
  [[nodiscard]] QString withPublished(const QString& own, const PlantValue& value) const;
  [[nodiscard]] QString withRuleCaution(const QString& note) const;
  [[nodiscard]] QString withFamilyNote(const QString& note) const;

  PlantDesk& desk_;
  bool editable_;
  std::vector<Field> fields_;
};

}  // namespace tussock
