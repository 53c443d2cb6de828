// SPDX-License-Identifier: MIT
// The user's own plants that hold in every yard, with the file they are kept in. A change is on
// disk before the document shows it.
#pragma once

#include <QObject>
#include <vector>

#include "app/document/document.h"
#include "core/catalog/edit_plants.h"

namespace tussock {

class PersonalCatalogue : public QObject {
  Q_OBJECT

 public:
  explicit PersonalCatalogue(Document& document, QObject* parent = nullptr)
      : QObject(parent), document_(document) {}

  // From the file; gives what cannot be read in it. The rest is in use.
  std::vector<CatalogueError> load();
  [[nodiscard]] const std::vector<OwnSpecies>& plants() const { return plants_; }

  // All throw std::runtime_error when the file cannot be written, or was changed elsewhere: then
  // what it holds is taken in and the change is not made.
  void make(const PersonalEdit& edit);
  // Each in place of the plant of its name.
  void take(const std::vector<OwnSpecies>& more);
  [[nodiscard]] bool canUndo() const { return !before_.empty(); }
  void undo();  // the last change made here

 private:
  using History = std::vector<std::vector<OwnSpecies>>;  // oldest first
  [[nodiscard]] History historyWithNow() const;
  void write(const std::vector<OwnSpecies>& plants, History history);

  Document& document_;
  std::vector<OwnSpecies> plants_;
  History before_;
};

}  // namespace tussock
