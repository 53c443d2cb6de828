// SPDX-License-Identifier: MIT
// One order of undoing for the yard's edits and the changes of the plants that hold in all yards:
// the last thing done is taken back first, whatever it was.
#pragma once

#include <optional>
#include <QObject>

#include "app/document/personal_catalogue.h"

namespace tussock {

class EditOrder : public QObject {
  Q_OBJECT

 public:
  EditOrder(Document& document, PersonalCatalogue& personal, QObject* parent = nullptr);

  void undo();
  void redo();
  // What undo and redo take next; nothing where there is nothing, or the yard is only looked at.
  [[nodiscard]] std::optional<QString> undoLabel() const;
  [[nodiscard]] std::optional<QString> redoLabel() const;

 signals:
  void changed();  // the labels may be others
  void troubled(const QString& words);

 private:
  [[nodiscard]] bool undoesPersonal() const;
  [[nodiscard]] bool redoesPersonal() const;
  bool attempt(void (PersonalCatalogue::*step)());

  Document& document_;
  PersonalCatalogue& personal_;
};

}  // namespace tussock
