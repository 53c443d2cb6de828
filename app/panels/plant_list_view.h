// SPDX-License-Identifier: MIT
// The plant list of a bed: the species chosen for it, each with the share of its plants that it
// should have. Every change is one edit.
#pragma once

#include <QWidget>

#include "app/document/document.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace tussock {

class SpeciesCompleter;

class PlantListView : public QWidget {
  Q_OBJECT

 public:
  PlantListView(Document& document, Id<Bed> bed, QWidget* parent = nullptr);

  void refresh();
  void say(const QString& words);  // until the list or the yard changes

 private:
  [[nodiscard]] std::vector<ListedSpecies> list() const;
  void sayWhatIsSo(const std::vector<ListedSpecies>& now);
  void addRow(const ListedSpecies& entry, std::size_t index);
  void addTyped();
  void refuse(const QString& typed, const std::vector<const Species*>& named);
  void add(const std::string& species);
  void remove(std::size_t index);
  void setMatrix(std::size_t index, bool matrix);
  [[nodiscard]] QPushButton* matrixButton(const ListedSpecies& entry, std::size_t index,
                                          QWidget* row);
  QString setShare(std::size_t index, const QString& typed);

  Document& document_;
  Id<Bed> bed_;
  std::vector<ListedSpecies> shown_;
  QVBoxLayout* rows_;
  QWidget* content_ = nullptr;
  SpeciesCompleter* names_ = nullptr;
  QLineEdit* add_;
  QLabel* said_;
  QPushButton* keep_;  // what was planted, as the list
};

}  // namespace tussock
