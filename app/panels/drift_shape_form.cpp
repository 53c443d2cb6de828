// SPDX-License-Identifier: MIT
#include "app/panels/drift_shape_form.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QLocale>

#include "app/panels/field_text.h"
#include "app/panels/form_words.h"
#include "app/panels/object_form.h"
#include "core/catalog/bloom.h"
#include "core/planting/reshape_drift.h"

namespace tussock {

namespace {

const LengthBounds kSpacings{Length::centimetres(5), Length::metres(6.0)};

QStringList patternWords() {
  return {formTr("staggered, no rows"), formTr("triangular rows"), formTr("square rows"),
          formTr("single plants"), formTr("fills between drifts")};
}

// Plants the drift in the shape; gives what is to be said about it.
QString plantIn(Document& document, Id<Drift> id, const DriftShape& shape) {
  const Drift* drift = document.yard().drifts.find(id);
  if (!drift || shape == shapeOf(*drift)) return {};
  if (drift->locked) return formTr("The drift is locked. Unlock it first.");
  if (drift->existing())
    return formTr("These plants stand there already. Take the tick off to plant anew.");
  const DriftEdit edit = reshapeDrift(document.yard(), id, shape, document.ids());
  if (edit.edit.empty())
    return formTr("No plant fits here like that. Move the drift or make it less.");
  document.commit(edit.edit);
  if (edit.fitted >= edit.asked || shape.count >= kAsManyAsFit) return {};
  return formTr("%1 of %2 fit here. Undo brings the others back.").arg(edit.fitted).arg(edit.asked);
}

// Runs `change(shape, drift)` on the drift's shape now.
template <class Change>
QString reshape(Document& document, Id<Drift> id, Change change) {
  const Drift* drift = document.yard().drifts.find(id);
  if (!drift) return {};
  DriftShape shape = shapeOf(*drift);
  const QString wrong = change(shape, *drift);
  return wrong.isEmpty() ? plantIn(document, id, shape) : wrong;
}

QString readSpacing(Document& document, Id<Drift> id, const QString& typed) {
  Length spacing;
  const QString wrong = readLength(typed, document.yard().settings.units, kSpacings, spacing);
  if (!wrong.isEmpty()) return wrong;
  const Drift* drift = document.yard().drifts.find(id);
  if (drift && drift->existing()) {
    editObject(document, id, formTr("Change spacing"), [&](Drift& d) { d.spacing = spacing; });
    return {};
  }
  return reshape(document, id, [&](DriftShape& shape, const Drift&) {
    shape.spacing = spacing;
    return QString();
  });
}

QString readStretch(Document& document, Id<Drift> id, const QString& typed) {
  bool read = false;
  const double stretch = QLocale().toDouble(typed.trimmed(), &read);
  if (!read || stretch < 1.0 || stretch > 10.0)
    return formTr("Write a number from 1 to 10, such as 3.");
  return reshape(document, id, [&](DriftShape& shape, const Drift&) {
    shape.stretch = stretch;
    return QString();
  });
}

QString readPlants(Document& document, Id<Drift> id, const QString& typed) {
  bool read = false;
  const int count = QLocale().toInt(typed.trimmed(), &read);
  if (!read || count < 1 || count > 9999) return formTr("Write a number of plants from 1 to 9999.");
  return reshape(document, id, [&](DriftShape& shape, const Drift&) {
    shape.count = count % 2 == 0 ? count - 1 : count;
    return count % 2 == 0 && shape.count == 0 ? formTr("Write 1 or more.") : QString();
  });
}

void takePattern(Document& document, Id<Drift> id, FieldForm& form, int index) {
  const Drift* drift = document.yard().drifts.find(id);
  if (!drift) return;
  DriftShape shape = shapeOf(*drift);
  shape.pattern = Pattern(index);
  if (shape.pattern == Pattern::Matrix) shape.count = kAsManyAsFit;
  (void)plantIn(document, id, shape);
  form.refresh();
}

}  // namespace

void addShapeFields(FieldForm& form, Document& document, Id<Drift> id) {
  const auto drift = [&document, id] { return document.yard().drifts.find(id); };
  const auto units = [&document] { return document.yard().settings.units; };
  form.addChoice(
      QStringLiteral("drift-pattern"), formTr("Pattern"), patternWords(),
      [drift] { return drift() ? int(drift()->pattern) : 0; },
      [&document, id, &form](int index) { takePattern(document, id, form, index); });
  form.addField(
      QStringLiteral("drift-spacing"), formTr("Spacing"),
      [drift, units] {
        return drift() ? QString::fromStdString(formatPlantSize(drift()->spacing, units()))
                       : QString();
      },
      [&document, id](const QString& typed) { return readSpacing(document, id, typed); });
  form.addField(
      QStringLiteral("drift-plants"), formTr("Count"),
      [drift] { return drift() ? QString::number(drift()->plants.size()) : QString(); },
      [&document, id](const QString& typed) { return readPlants(document, id, typed); });
  form.addField(
      QStringLiteral("drift-stretch"), formTr("Length to width"),
      [drift] { return drift() ? QLocale().toString(drift()->stretch, 'g', 2) : QString(); },
      [&document, id](const QString& typed) { return readStretch(document, id, typed); });
}

}  // namespace tussock
