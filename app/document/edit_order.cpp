// SPDX-License-Identifier: MIT
#include "app/document/edit_order.h"

#include <stdexcept>

namespace tussock {

EditOrder::EditOrder(Document& document, PersonalCatalogue& personal, QObject* parent)
    : QObject(parent), document_(document), personal_(personal) {
  connect(&document_, &Document::changed, this, &EditOrder::changed);
  connect(&document_, &Document::opened, this, &EditOrder::changed);
  connect(&personal_, &PersonalCatalogue::stepsChanged, this, &EditOrder::changed);
}

// A change of the plants comes before the edit of the yard that it was made after.
bool EditOrder::undoesPersonal() const {
  const auto* step = personal_.undoStep();
  return step && (step->lastEdit == document_.lastEdit() || !document_.undoLabel() ||
                  document_.isReadOnly());
}

// What was made together with an edit of the yard is done again when that edit is the next.
bool EditOrder::redoesPersonal() const {
  const auto* step = personal_.redoStep();
  if (!step) return false;
  const std::int64_t from = step->withYardEdit ? step->lastEdit - 1 : step->lastEdit;
  return from == document_.lastEdit() || !document_.redoLabel() || document_.isReadOnly();
}

bool EditOrder::attempt(void (PersonalCatalogue::*step)()) {
  try {
    (personal_.*step)();
    return true;
  } catch (const std::runtime_error& problem) {
    emit troubled(QString::fromUtf8(problem.what()));
    return false;
  }
}

void EditOrder::undo() {
  if (!undoesPersonal()) return document_.undo();
  const bool both =
      personal_.undoStep()->withYardEdit && personal_.undoStep()->lastEdit == document_.lastEdit();
  if (attempt(&PersonalCatalogue::undo) && both) document_.undo();
}

void EditOrder::redo() {
  if (!redoesPersonal()) return document_.redo();
  const bool both = personal_.redoStep()->withYardEdit &&
                    personal_.redoStep()->lastEdit == document_.lastEdit() + 1;
  if (attempt(&PersonalCatalogue::redo) && both) document_.redo();
}

std::optional<QString> EditOrder::undoLabel() const {
  if (undoesPersonal()) return personal_.undoStep()->label;
  return document_.isReadOnly() ? std::nullopt : document_.undoLabel();
}

std::optional<QString> EditOrder::redoLabel() const {
  if (redoesPersonal()) return personal_.redoStep()->label;
  return document_.isReadOnly() ? std::nullopt : document_.redoLabel();
}

}  // namespace tussock
