// SPDX-License-Identifier: MIT
// The user's own plants that hold in every yard, with the file they are kept in. A change is on
// disk before the document shows it. What was changed here can be undone until the program ends.
#pragma once

#include <optional>
#include <QObject>
#include <vector>

#include "app/document/document.h"
#include "core/catalog/edit_plants.h"

namespace tussock {

class PersonalCatalogue : public QObject {
  Q_OBJECT

 public:
  explicit PersonalCatalogue(Document& document, QObject* parent = nullptr);

  // From the file; gives what cannot be read in it. The rest is in use.
  std::vector<CatalogueError> load();
  [[nodiscard]] const std::vector<OwnSpecies>& plants() const { return plants_; }

  // A change made here: what it is called, and after which edit of the open yard it was made.
  struct Step {
    std::vector<OwnSpecies> before, after;
    QString label;
    std::int64_t lastEdit = 0;
    bool withYardEdit = false;  // that edit is part of it
  };

  // All throw std::runtime_error when the file cannot be written, or was changed elsewhere: then
  // what it holds is taken in, the change is not made, and those before it cannot be undone.
  void make(const PersonalEdit& edit, const QString& label);
  // Each in place of the plant of its name, and of a row of the file that cannot be used: then the
  // file is kept beside first, and its path is given, else nothing.
  QString take(const std::vector<OwnSpecies>& more, const QString& label);
  void undo();
  void redo();
  // The edit that the yard has just been given belongs to the last change here.
  void joinYardEdit();
  [[nodiscard]] const Step* undoStep() const { return done_.empty() ? nullptr : &done_.back(); }
  [[nodiscard]] const Step* redoStep() const { return undone_.empty() ? nullptr : &undone_.back(); }

 signals:
  void stepsChanged();

 private:
  void change(std::vector<OwnSpecies> after, const QString& label,
              const std::vector<OwnSpecies>& taken = {});
  void write(const std::vector<OwnSpecies>& plants, const std::vector<OwnSpecies>& taken = {});
  void takeYard();

  Document& document_;
  std::vector<OwnSpecies> plants_;
  std::vector<Step> done_, undone_;  // the next to be taken last
};

}  // namespace tussock
