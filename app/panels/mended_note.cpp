// SPDX-License-Identifier: MIT
#include "app/panels/mended_note.h"

#include <QCoreApplication>
#include <QStringList>

namespace tussock {

namespace {

QString mendedText(const char* words) {
  return QCoreApplication::translate("MendedNote", words);
}

}  // namespace

QString mendedNote(const MendedDrift& mended) {
  QStringList notes;
  if (mended.broken == 1)
    notes << mendedText(
        "1 plant of the drift found no free place near: move the drift, or take plants out.");
  if (mended.broken > 1)
    notes << mendedText(
                 "%1 plants of the drift found no free place near: move the drift, or take some out.")
                 .arg(mended.broken);
  if (mended.apart > 0)
    notes << mendedText(
        "The drift is not in one piece now. Undo brings the plants back; Set out anew plants all "
        "of it by the rules.");
  return notes.join(u' ');
}

}  // namespace tussock
