// SPDX-License-Identifier: MIT
// Which commands can be given: a command that could do nothing is not offered.
#include <algorithm>

#include "app/document/edit_order.h"
#include "app/panels/selection.h"
#include "app/window/actions.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {

void enable(const QList<QAction*>& actions, bool enabled) {
  for (QAction* action : actions) action->setEnabled(enabled);
}

}  // namespace

void Actions::follow(const Document& document, const EditOrder& order) {
  const bool isOpen = document.isOpen();
  const bool writable = isOpen && !document.isReadOnly();
  const auto& selection = document.selection();
  const auto drifts = std::count_if(selection.begin(), selection.end(),
                                    [](ObjectRef ref) { return idIf<Drift>(ref).has_value(); });
  enable({saveCopy, closeYard, exportSite, plan, print, fit, zoomIn, zoomOut, sun, shadows, names,
          suits, plantFacts, plantAdd, plantList, plantsIn, ownPlantsOut, allPlantsOut},
         isOpen);
  enable({importSite, photo}, writable);
  enable(units.actions(), writable);
  enable({remove}, writable && !selection.empty());
  enable({toSelection}, !selection.empty());
  enable({selectAll}, !document.yard().drifts.empty());
  enable({merge}, writable && drifts == 2);
  enable({setOut, settle, lock}, writable && drifts > 0);
  enable({fillBed}, writable && bedOfSelection(document.yard(), selection) != nullptr);
  for (QAction* action : units.actions())
    action->setChecked(action->data().toInt() == int(document.yard().settings.units));
  nameUndo(order);
}

void Actions::nameUndo(const EditOrder& order) {
  const auto undoLabel = order.undoLabel();
  const auto redoLabel = order.redoLabel();
  undo->setEnabled(undoLabel.has_value());
  redo->setEnabled(redoLabel.has_value());
  undo->setText(undoLabel ? tr("&Undo: %1").arg(*undoLabel) : tr("&Undo"));
  redo->setText(redoLabel ? tr("&Redo: %1").arg(*redoLabel) : tr("&Redo"));
}

}  // namespace tussock
