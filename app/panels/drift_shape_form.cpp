// SPDX-License-Identifier: MIT
#include "app/panels/drift_shape_form.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QLocale>

#include "app/panels/field_text.h"
#include "app/panels/form_words.h"
#include "app/panels/forms.h"
#include "app/panels/object_form.h"
#include "core/catalog/bloom.h"
#include "core/planting/reshape_drift.h"
#include "core/units/typed_size.h"

namespace tussock {

namespace {

const LengthBounds kSpacings{Length::centimetres(5), Length::metres(6.0)};
constexpr int kMostPlants = 9999;

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
  const auto stood = int(drift->plants.size());
  const DriftEdit edit = reshapeDrift(document.yard(), id, shape, document.ids());
  if (edit.fitted == 0)
    return formTr("No plant fits here like that. Move the drift or make it less.");
  if (!edit.edit.empty()) document.commit(edit.edit);
  if (edit.fitted >= edit.asked || shape.count >= kAsManyAsFit) return {};
  const QString fit = formTr("%1 of %2 fit here.").arg(edit.fitted).arg(edit.asked);
  const QString more = edit.edit.empty()     ? formTr(" Move the drift or give it less spacing.")
                       : edit.fitted < stood ? formTr(" Undo brings the others back.")
                                             : QString();
  return fit + more;
}

// Runs `change(shape)` on the drift's shape now; it gives what is wrong with that.
template <class Change>
QString reshape(Document& document, Id<Drift> id, Change change) {
  const Drift* drift = document.yard().drifts.find(id);
  if (!drift) return {};
  DriftShape shape = shapeOf(*drift);
  const QString wrong = change(shape);
  return wrong.isEmpty() ? plantIn(document, id, shape) : wrong;
}

QString spacingText(const Document& document, Length length) {
  return QString::fromStdString(formatPlantSize(length, document.yard().settings.units));
}

// Beside the stretch asked for, where the drift stands otherwise.
QString standsText(const Document& document, const Drift& drift) {
  const auto stands = stretchIfOther(document.yard().settings, drift);
  return stands ? formTr("asked, stands %1").arg(QLocale().toString(*stands, 'f', 1)) : QString();
}

QString tooNearOrFar(const Document& document, const DriftShape& shape) {
  return formTr(
             "%1 on this ground would stand %2 apart; a spacing goes from %3 to %4. Change the "
             "ground first.")
      .arg(shape.count)
      .arg(spacingText(document, shape.spacing), spacingText(document, kSpacings.least),
           spacingText(document, kSpacings.most));
}

QString readSpacing(Document& document, Id<Drift> id, const QString& typed) {
  const UnitSystem units = document.yard().settings.units;
  const auto read = parsePlantSize(typed.toStdString(), units, kSpacings.least, kSpacings.most);
  if (!read || *read < kSpacings.least || *read > kSpacings.most)
    return formTr("Write a spacing from %1 to %2.")
        .arg(spacingText(document, kSpacings.least), spacingText(document, kSpacings.most));
  const Length spacing = *read;
  const Drift* drift = document.yard().drifts.find(id);
  if (drift && drift->existing()) {
    editObject(document, id, formTr("Change spacing"), [&](Drift& d) { d.spacing = spacing; });
    return {};
  }
  return reshape(document, id, [&](DriftShape& shape) {
    shape = withSpacing(shape, spacing);
    return QString();
  });
}

QString readStretch(Document& document, Id<Drift> id, const QString& typed) {
  bool read = false;
  const double stretch = QLocale().toDouble(typed.trimmed(), &read);
  if (!read || stretch < 1.0 || stretch > 10.0)
    return formTr("Write a number from 1 to 10, such as 3.");
  return reshape(document, id, [&](DriftShape& shape) {
    shape.stretch = stretch;
    return QString();
  });
}

QString readPlants(Document& document, Id<Drift> id, const QString& typed) {
  bool read = false;
  const int count = QLocale().toInt(typed.trimmed(), &read);
  if (!read || count < 1 || count > kMostPlants)
    return formTr("Write a number of plants from 1 to %1.").arg(kMostPlants);
  const QString said = reshape(document, id, [&](DriftShape& shape) {
    shape = withCount(shape, count);
    const bool fits = shape.spacing >= kSpacings.least && shape.spacing <= kSpacings.most;
    return fits ? QString() : tooNearOrFar(document, shape);
  });
  const Drift* drift = document.yard().drifts.find(id);
  if (!said.isEmpty() || count % 2 != 0 || !drift || !isCounted(*drift)) return said;
  return formTr("%1 as asked; drifts of odd count look less set out.").arg(count);
}

QString readGround(Document& document, Id<Drift> id, const QString& typed) {
  const UnitSystem units = document.yard().settings.units;
  const auto ground = parseArea(typed.toStdString(), units);
  if (!ground || *ground <= Area())
    return formTr("“%1” is not an area. Write one such as %2.")
        .arg(typed, areaText(document, Area::squareMetres(2.5)));
  return reshape(document, id, [&](DriftShape& shape) {
    shape = onGround(shape, *ground);
    return shape.count <= kMostPlants
               ? QString()
               : formTr("That is ground for more than %1 plants. Write less.").arg(kMostPlants);
  });
}

void takePattern(Document& document, Id<Drift> id, FieldForm& form, int index) {
  const Drift* drift = document.yard().drifts.find(id);
  if (!drift) return;
  DriftShape shape = shapeOf(*drift);
  shape.pattern = Pattern(index);
  if (shape.pattern == Pattern::Matrix) shape.count = kAsManyAsFit;
  if (const QString said = plantIn(document, id, shape); !said.isEmpty())
    emit document.remark(said);
  form.refresh();
}

}  // namespace

void addShapeFields(FieldForm& form, Document& document, Id<Drift> id) {
  // With an edit in hand made, so that count, spacing and ground follow a drag.
  const auto drift = [&document, &form, id]() -> const Drift* {
    if (form.previewed())
      if (const auto* in = std::get_if<Drift>(&*form.previewed()); in && in->id == id) return in;
    return document.yard().drifts.find(id);
  };
  form.addChoice(
      QStringLiteral("drift-pattern"), formTr("Pattern"), patternWords(),
      [drift] { return drift() ? int(drift()->pattern) : 0; },
      [&document, id, &form](int index) { takePattern(document, id, form, index); });
  form.addField(
          QStringLiteral("drift-spacing"), formTr("Spacing"),
          [drift, &document] {
            return drift() ? spacingText(document, drift()->spacing) : QString();
          },
          [&document, id](const QString& typed) { return readSpacing(document, id, typed); })
      ->setToolTip(formTr("The ground stays; the count answers"));
  form.addField(
          QStringLiteral("drift-plants"), formTr("Count"),
          [drift] { return drift() ? QString::number(drift()->plants.size()) : QString(); },
          [&document, id](const QString& typed) { return readPlants(document, id, typed); })
      ->setToolTip(formTr("The ground stays; the spacing answers. + and − grow the drift instead"));
  form.addField(
          QStringLiteral("drift-ground"), formTr("Ground"),
          [drift, &document] {
            return drift() ? areaText(document, groundOf(*drift())) : QString();
          },
          [&document, id](const QString& typed) { return readGround(document, id, typed); })
      ->setToolTip(formTr("The spacing stays; the count answers"));
  QLineEdit* stretch = form.addField(
      QStringLiteral("drift-stretch"), formTr("Length to width"),
      [drift] { return drift() ? QLocale().toString(drift()->stretch, 'g', 2) : QString(); },
      [&document, id](const QString& typed) { return readStretch(document, id, typed); });
  form.addAside(*stretch, QStringLiteral("drift-stands"), [drift, &document] {
    return drift() ? standsText(document, *drift()) : QString();
  });
}

}  // namespace tussock
