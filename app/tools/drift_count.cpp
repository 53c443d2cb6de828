// SPDX-License-Identifier: MIT
#include "app/tools/drift_count.h"

#include "app/tools/locked_drifts.h"
#include "core/catalog/bloom.h"
#include "core/planting/edit_drift.h"
#include "core/units/measure_text.h"

namespace tussock {

namespace {
constexpr int kShownMilliseconds = 1400;
}

QString fitNote(int asked, int fitted) {
  if (asked <= fitted) return {};
  if (fitted == 0) return QObject::tr("%1 planned, none fit here").arg(asked);
  return QObject::tr("%1 planned, %2 fit here").arg(asked).arg(fitted);
}

QString groundNote(const Drift& drift, UnitSystem units) {
  return QObject::tr("%1 · %2 apart")
      .arg(QString::fromStdString(formatArea(groundOf(drift), units)),
           QString::fromStdString(formatPlantSize(drift.spacing, units)));
}

QString groundsNote(const Drift& one, const Drift& other, UnitSystem units) {
  return QObject::tr("%1 + %2 · %3 apart")
      .arg(QString::fromStdString(formatArea(groundOf(one), units)),
           QString::fromStdString(formatArea(groundOf(other), units)),
           QString::fromStdString(formatPlantSize(one.spacing, units)));
}

QString notesTogether(const QString& first, const QString& second) {
  return first.isEmpty() ? second : QObject::tr("%1 · %2").arg(first, second);
}

const Drift* driftIn(const ChangeSet& edit, Id<Drift> drift) {
  for (const Change& change : edit.changes) {
    const auto* after = change.after ? std::get_if<Drift>(&*change.after) : nullptr;
    if (after && after->id == drift) return after;
  }
  return nullptr;
}

void showCount(Canvas& canvas, const Drift& drift, const QString& note) {
  const Box box = boundsOf(positionsOf(drift));
  const UnitSystem units = canvas.document().yard().settings.units;
  canvas.showFigure({box.centre().x, box.high.y + drift.spacing.metres()},
                    QString::number(drift.plants.size()),
                    notesTogether(note, groundNote(drift, units)));
}

DriftCount::DriftCount(Canvas& canvas, QObject* parent) : QObject(parent), canvas_(canvas) {
  fade_.setSingleShot(true);
  fade_.setInterval(kShownMilliseconds);
  connect(&fade_, &QTimer::timeout, &canvas, &Canvas::clearFigure);
}

bool DriftCount::step(int direction) {
  Document& document = canvas_.document();
  if (document.selection().size() != 1) return false;
  const auto id = idIf<Drift>(document.selection().front());
  const Drift* drift = id ? document.yard().drifts.find(*id) : nullptr;
  if (!drift) return false;
  const int now = int(drift->plants.size());
  const int wanted = direction > 0 ? nextCount(now) : previousCount(now);
  if (wanted == now || tellIfLocked(canvas_, *id)) return true;
  const DriftEdit edit = resizeDrift(document.yard(), *id, wanted, document.ids());
  if (!edit.edit.empty()) document.commit(edit.edit);
  const int after = int(document.yard().drifts.find(*id)->plants.size());
  const Item* item = canvas_.scene().find(refTo(*id));
  const Box box = item ? item->bounds() : Box{};
  canvas_.showFigure(Point{box.centre().x, box.high.y}, QString::number(after),
                     fitNote(wanted, after));
  fade_.start();
  return true;
}

}  // namespace tussock
