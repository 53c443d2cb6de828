// SPDX-License-Identifier: MIT
#include <QCheckBox>
#include <QLineEdit>

#include "app/panels/drift_shape_form.h"
#include "app/panels/form_words.h"
#include "app/panels/forms.h"
#include "app/panels/object_form.h"
#include "app/panels/species_marks.h"
#include "core/catalog/bloom.h"
#include "core/catalog/fit.h"
#include "core/planting/edit_drift.h"
#include "core/planting/totals.h"

namespace tussock {

namespace {

const LengthBounds kSetbacks{Length(), Length::metres(5.0)};

QStringList moistureChoices() {
  return {formTr("dry"), formTr("medium"), formTr("moist"), formTr("wet")};
}

// Typed by hand: commas and the word "and" part the sides as well as semicolons.
QString readViewing(const QString& typed, Viewing& value) {
  QString sides = typed.toLower();
  sides.replace(QLatin1String(" and "), QLatin1String(";"));
  sides.replace(QLatin1Char(','), QLatin1Char(';'));
  sides.remove(QLatin1Char(' '));
  if (sides == QLatin1String("allround")) sides = QStringLiteral("all");
  const QString asKept = sides == QLatin1String("all") ? sides : sides.toUpper();
  const auto viewing = parseViewing(asKept.toStdString());
  if (!viewing) return formTr("Write compass sides such as S or S, SW, or write all.");
  value = *viewing;
  return {};
}

QString setbackText(const Bed& bed, UnitSystem units) {
  return bed.setback ? lengthText(*bed.setback, units) : QString();
}

QString readSetback(const QString& typed, UnitSystem units, std::optional<Length>& value) {
  if (typed.trimmed().isEmpty()) {
    value.reset();
    return {};
  }
  Length read;
  QString wrong = readLength(typed, units, kSetbacks, read);
  if (wrong.isEmpty()) value = read;
  return wrong;
}

QString plantsText(const Document& document, const Bed& bed) {
  const Totals totals = totalsOf(document.yard(), bed);
  if (totals.plants == 0) return formTr("None yet. Drag a species from the bench into the bed.");
  return formTr("%1 of %2 species; the main layer takes %3 % of the ground")
      .arg(plantCountText(totals))
      .arg(totals.species)
      .arg(qRound(totals.share() * 100.0));
}

QString bedSunText(const Document& document, const Bed& bed) {
  const auto map = document.sunMap();
  const auto hours = map ? map->meanHours(bed.outline) : std::nullopt;
  if (!hours) return formTr("being worked out");
  return formTr("%1 a day, mean of the season").arg(hoursText(*hours));
}

QString driftSunText(const Document& document, const Drift& drift) {
  const auto map = document.sunMap();
  const auto sun = map ? sunOn(drift, *map) : std::nullopt;
  if (!sun) return formTr("being worked out");
  return formTr("%1 (%2 before noon, %3 after)")
      .arg(hoursText(sun->total()), QLocale().toString(sun->beforeNoon, 'f', 1),
           QLocale().toString(sun->afterNoon, 'f', 1));
}

QString needsText(const Document& document, const Drift& drift) {
  const Species* species = document.facts().find(drift.species);
  if (!species) return formTr("not in the plant facts");
  const HoursRange wanted = hoursWanted(*species, sunProfile(document.yard().settings.sunProfile));
  const QString least = QLocale().toString(wanted.least, 'g', 3);
  const QString hours =
      wanted.most >= 16.0
          ? formTr("%1 h or more").arg(least)
          : formTr("%1 to %2 h").arg(least, QLocale().toString(wanted.most, 'g', 3));
  return wanted.least <= 0.0 && wanted.most >= 16.0
             ? moistureWords(*species)
             : formTr("%1; %2").arg(hours, moistureWords(*species));
}

QString heightText(const Document& document, const Drift& drift) {
  const Species* species = document.facts().find(drift.species);
  if (!species) return formTr("not known");
  return formTr("%1 high in flower")
      .arg(text(formatPlantSize(species->height(), document.yard().settings.units)));
}

// Of the sizes that Stock offers this one says what is not to be had, so it stands by itself too.
void addExistingTick(FieldForm& form, Document& document, Id<Drift> id) {
  const auto drift = [&document, id] { return document.yard().drifts.find(id); };
  QCheckBox* tick = form.addTick(
      QStringLiteral("drift-existing"), formTr("Standing there already"),
      [drift] { return drift() && drift()->existing(); },
      [&document, id](bool stands) {
        editObject(document, id,
                   stands ? formTr("Mark as standing") : formTr("Mark as to be planted"),
                   [stands](Drift& d) { d.size = stands ? StockSize::Existing : StockSize::Plug; });
      });
  tick->setToolTip(formTr("Left out of what is to be had and of the stake-out"));
}

}  // namespace

QString areaText(const Document& document, Area area) {
  return text(formatArea(area, document.yard().settings.units));
}

QString stockWords(StockSize size) {
  switch (size) {
    case StockSize::Seed:
      return formTr("seed");
    case StockSize::Plug:
      return formTr("plug");
    case StockSize::Quart:
      return formTr("quart");
    case StockSize::Gallon:
      return formTr("gallon");
    case StockSize::Existing:
      return formTr("standing already");
  }
  return {};
}

QString layerWords(Layer layer) {
  switch (layer) {
    case Layer::Main:
      return formTr("main");
    case Layer::Ground:
      return formTr("ground, under and between");
    case Layer::Bulbs:
      return formTr("bulbs, gone by summer");
  }
  return {};
}

void fillForm(FieldForm& form, Document& document, Id<Bed> id) {
  ObjectForm<Bed> bed(form, document, id);
  const auto units = [&document] { return document.yard().settings.units; };
  bed.text("bed-name", formTr("Name"), &Bed::name);
  bed.fact("bed-area", formTr("Area"),
           [&](const Bed& b) { return areaText(document, areaOf(b.outline)); });
  bed.fact("bed-plants", formTr("Plants"), [&](const Bed& b) { return plantsText(document, b); });
  bed.fact("bed-sun", formTr("Sun"), [&](const Bed& b) { return bedSunText(document, b); });
  bed.choice("bed-moisture", formTr("Moisture"), &Bed::moisture, moistureChoices());
  bed.choice("bed-texture", formTr("Soil"), &Bed::texture,
             {formTr("not known"), formTr("sand"), formTr("loam"), formTr("silt"), formTr("clay")});
  bed.field(
      "bed-setback", formTr("Set-back"), [units](const Bed& b) { return setbackText(b, units()); },
      [units](Bed& b, const QString& typed) { return readSetback(typed, units(), b.setback); });
  bed.field(
      "bed-viewing", formTr("Seen from"),
      [](const Bed& b) { return QString::fromStdString(formatViewing(b.viewing)); },
      [](Bed& b, const QString& typed) { return readViewing(typed, b.viewing); });
  if (auto* setback = form.findChild<QLineEdit*>(QStringLiteral("bed-setback")))
    setback->setPlaceholderText(formTr("half the spacing"));
  if (auto* viewing = form.findChild<QLineEdit*>(QStringLiteral("bed-viewing")))
    viewing->setPlaceholderText(formTr("S, SW or all"));
}

void fillForm(FieldForm& form, Document& document, Id<Patch> id) {
  ObjectForm<Patch> patch(form, document, id);
  patch.text("patch-name", formTr("Name"), &Patch::name);
  patch.fact("patch-area", formTr("Area"),
             [&](const Patch& p) { return areaText(document, areaOf(p.outline)); });
  patch.choice("patch-moisture", formTr("Moisture"), &Patch::moisture, moistureChoices());
}

void fillForm(FieldForm& form, Document& document, Id<Drift> id) {
  ObjectForm<Drift> drift(form, document, id);
  addExistingTick(form, document, id);
  addShapeFields(form, document, id);
  drift.fact("drift-height", formTr("Height"),
             [&](const Drift& d) { return heightText(document, d); });
  drift.fact("drift-sun", formTr("Sun here"),
             [&](const Drift& d) { return driftSunText(document, d); });
  drift.fact("drift-needs", formTr("Needs"),
             [&](const Drift& d) { return needsText(document, d); });
  drift.fact("drift-code", formTr("Code"), [&](const Drift& d) {
    return QString::fromStdString(codeOf(document.yard(), d.species));
  });
  QStringList sizes, layers;
  for (const auto& [size, word] : EnumWords<StockSize>::values) sizes << stockWords(size);
  for (const auto& [layer, word] : EnumWords<Layer>::values) layers << layerWords(layer);
  drift.choice("drift-size", formTr("Stock"), &Drift::size, sizes);
  drift.choice("drift-layer", formTr("Layer"), &Drift::layer, layers);
  drift.tick("drift-locked", formTr("Locked"), &Drift::locked);
  if (auto* locked = form.findChild<QCheckBox*>(QStringLiteral("drift-locked")))
    locked->setToolTip(formTr("Moving a bed or filling it leaves a locked drift where it is"));
}

}  // namespace tussock
