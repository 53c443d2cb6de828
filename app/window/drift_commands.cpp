// SPDX-License-Identifier: MIT
#include "app/window/drift_commands.h"

#include <algorithm>

#include "app/panels/mended_note.h"
#include "app/tools/locked_drifts.h"
#include "app/tools/split_tool.h"
#include "core/checks/mend_drift.h"
#include "core/planting/divide_drift.h"

namespace tussock {

std::vector<Id<Drift>> DriftCommands::selected() const {
  std::vector<Id<Drift>> drifts;
  for (const ObjectRef ref : document_.selection())
    if (const auto drift = idIf<Drift>(ref)) drifts.push_back(*drift);
  return drifts;
}

void DriftCommands::commit(const Yard& after, const QString& label) {
  const ChangeSet edit = difference(document_.yard(), after, label.toStdString());
  if (!edit.empty()) document_.commit(edit);
}

void DriftCommands::merge() {
  const auto drifts = selected();
  if (drifts.size() != 2) return;
  const Division merged = mergeDrifts(document_.yard(), drifts[0], drifts[1], document_.ids());
  const std::string_view why = explain(merged.refusal);
  if (!why.empty()) return emit told(QString::fromUtf8(why.data(), qsizetype(why.size())));
  if (!document_.commit(merged.edit)) return;
  document_.select({refTo(merged.first)});
  if (const QString note = divisionNote(merged); !note.isEmpty()) emit told(note);
}

void DriftCommands::setOutAnew() {
  Yard after = document_.yard();
  int asked = 0, fitted = 0;
  bool locked = false;
  for (const Id<Drift> drift : selected()) {
    locked = locked || after.drifts.find(drift)->locked;
    const DriftEdit edit = regrowDrift(after, drift, document_.ids());
    if (edit.edit.empty()) continue;
    after = apply(after, edit.edit);
    asked += edit.asked;
    fitted += edit.fitted;
  }
  if (locked && after == document_.yard()) return emit told(lockedWords());
  commit(after, tr("Set drift out anew"));
  if (fitted < asked)
    emit told(tr("Of %1 plants %2 fit by the rules. Undo brings the others back.")
                  .arg(asked)
                  .arg(fitted));
}

void DriftCommands::settle() {
  Yard after = document_.yard();
  QString left;
  for (const Id<Drift> drift : selected()) {
    const MendedDrift mended = mendDrift(after, document_.facts(), drift);
    if (left.isEmpty()) left = mendedNote(mended);
    if (!mended.edit.empty()) after = apply(after, mended.edit);
  }
  if (after == document_.yard())
    return emit told(
        tr("No plant could be settled: they stand by the rules, are locked, or there "
           "is no free place near."));
  commit(after, tr("Settle plants"));
  if (!left.isEmpty()) emit told(left);
}

void DriftCommands::lockOrUnlock() {
  const auto drifts = selected();
  Yard after = document_.yard();
  const bool all = std::all_of(drifts.begin(), drifts.end(), [&](Id<Drift> id) {
    const Drift* drift = after.drifts.find(id);
    return drift && drift->locked;
  });
  for (const Id<Drift> drift : drifts)
    after = apply(after, lockDrift(after, drift, all ? DriftLock::Free : DriftLock::Locked).edit);
  commit(after, all ? tr("Unlock drift") : tr("Lock drift"));
}

}  // namespace tussock
