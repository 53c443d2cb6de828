// SPDX-License-Identifier: MIT
#include <QLineEdit>

#include "app/panels/form_words.h"
#include "app/panels/forms.h"
#include "app/panels/object_form.h"
#include "core/model/solid_bounds.h"

namespace tussock {

namespace {

const LengthBounds kHeights{kLeastHeight, kMostHeight};
const LengthBounds kCrowns{kLeastCrownRadius, kMostCrownRadius};
const LengthBounds kGrowths{Length(), Length::metres(3)};
const LengthBounds kOverhangs{Length(), Length::metres(5)};
const LengthBounds kWidths{Length::centimetres(1), Length::metres(30)};
const LengthBounds kBases{Length(), Length::metres(60)};
const Length kUsualRise = Length::metres(1.5);  // of a ridge that has not been measured

// Keeps a ridge above its eave, and a flat roof flat.
void settleRoof(Building& building) {
  if (building.roof == Roof::Flat) {
    building.ridge = building.eave;
  } else if (building.ridge <= building.eave) {
    building.ridge = building.eave + kUsualRise;
  }
}

QString readRidge(const QString& typed, UnitSystem units, Building& building) {
  return readLength(typed, units, {building.eave, kHeights.most}, building.ridge);
}

QString readRidgeAzimuth(const QString& typed, std::optional<Angle>& value) {
  if (typed.trimmed().isEmpty()) {
    value.reset();
    return {};
  }
  Angle read;
  QString wrong = readDegrees(typed, read);
  if (wrong.isEmpty()) value = read;
  return wrong;
}

void addRidge(FieldForm& form, ObjectForm<Building>& building, Document& document) {
  const auto units = [&document] { return document.yard().settings.units; };
  building.field(
      "building-ridge", formTr("Ridge"),
      [units](const Building& b) { return lengthText(b.ridge, units()); },
      [units](Building& b, const QString& typed) { return readRidge(typed, units(), b); });
  building.field(
      "building-ridge-azimuth", formTr("Ridge runs"),
      [](const Building& b) { return b.ridgeAzimuth ? degreesText(*b.ridgeAzimuth) : QString(); },
      [](Building& b, const QString& typed) { return readRidgeAzimuth(typed, b.ridgeAzimuth); });
  if (auto* azimuth = form.findChild<QLineEdit*>(QStringLiteral("building-ridge-azimuth"))) {
    azimuth->setPlaceholderText(formTr("along the long side"));
    azimuth->setToolTip(formTr("Degrees clockwise from north; 90° runs east and west"));
  }
}

QString readCrownBase(const QString& typed, UnitSystem units, Tree& tree) {
  return readLength(typed, units, {kBases.least, tree.height}, tree.crownBase);
}

QString readTreeHeight(const QString& typed, UnitSystem units, Tree& tree) {
  const Length least = tree.crownBase > kHeights.least ? tree.crownBase : kHeights.least;
  return readLength(typed, units, {least, kHeights.most}, tree.height);
}

// The underside stays under the eave.
void addBase(ObjectForm<Building>& building, Document& document) {
  const auto units = [&document] { return document.yard().settings.units; };
  building.field(
      "building-base", formTr("Underside"),
      [units](const Building& b) {
        return b.base > Length() ? lengthText(b.base, units()) : QString();
      },
      [units](Building& b, const QString& typed) {
        if (typed.trimmed().isEmpty()) {
          b.base = Length();
          return QString();
        }
        return readLength(typed, units(), {Length(), b.eave - kLeastHeight}, b.base);
      });
  building.length("building-overhang", formTr("Eaves reach"), &Building::overhang, kOverhangs);
}

QString readEave(const QString& typed, UnitSystem units, Building& building) {
  const LengthBounds bounds{building.base + kLeastHeight, kMostHeight};
  QString wrong = readLength(typed, units, bounds, building.eave);
  if (wrong.isEmpty()) settleRoof(building);
  return wrong;
}

QString readMatureHeight(const QString& typed, UnitSystem units, Tree& tree) {
  if (typed.trimmed().isEmpty()) {
    tree.matureHeight.reset();
    return {};
  }
  Length read;
  QString wrong = readLength(typed, units, kHeights, read);
  if (wrong.isEmpty()) tree.matureHeight = read;
  return wrong;
}

void addGrowth(FieldForm& form, ObjectForm<Tree>& tree, Document& document) {
  const auto units = [&document] { return document.yard().settings.units; };
  tree.length("tree-growth", formTr("Grows a year"), &Tree::growth, kGrowths);
  tree.field(
      "tree-mature-height", formTr("Full height"),
      [units](const Tree& t) {
        return t.matureHeight ? lengthText(*t.matureHeight, units()) : QString();
      },
      [units](Tree& t, const QString& typed) { return readMatureHeight(typed, units(), t); });
  if (auto* mature = form.findChild<QLineEdit*>(QStringLiteral("tree-mature-height")))
    mature->setPlaceholderText(formTr("not known"));
}

}  // namespace

void fillForm(FieldForm& form, Document& document, Id<Building> id) {
  ObjectForm<Building> building(form, document, id);
  const auto units = [&document] { return document.yard().settings.units; };
  building.text("building-name", formTr("Name"), &Building::name);
  building.fact("building-area", formTr("Ground"),
                [&](const Building& b) { return areaText(document, areaOf(b.footprint)); });
  form.addChoice(
      QStringLiteral("building-roof"), formTr("Roof"),
      {formTr("flat"), formTr("gable"), formTr("hip")},
      [&document, id] {
        const Building* b = objectIn(document.yard(), id);
        return b ? int(b->roof) : 0;
      },
      [building](int index) {
        building.edit(formTr("Roof"), [index](Building& b) {
          b.roof = Roof(index);
          settleRoof(b);
        });
      });
  building.field(
      "building-eave", formTr("Eave"),
      [units](const Building& b) { return lengthText(b.eave, units()); },
      [units](Building& b, const QString& typed) { return readEave(typed, units(), b); });
  const Building* now = objectIn(document.yard(), id);
  if (now && now->roof != Roof::Flat) addRidge(form, building, document);
  addBase(building, document);
  if (auto* base = form.findChild<QLineEdit*>(QStringLiteral("building-base")))
    base->setPlaceholderText(formTr("on the ground"));
  form.addNote(formTr(
      "Heights are above the ground at the wall. They decide the shade. A roof on posts or a "
      "deck has an underside: light passes below it."));
}

void fillForm(FieldForm& form, Document& document, Id<Barrier> id) {
  ObjectForm<Barrier> barrier(form, document, id);
  barrier.text("wall-name", formTr("Name"), &Barrier::name);
  barrier.choice("wall-kind", formTr("Kind"), &Barrier::kind,
                 {formTr("wall"), formTr("fence"), formTr("hedge")});
  barrier.length("wall-height", formTr("Height"), &Barrier::height, kHeights);
  barrier.length("wall-thickness", formTr("Thickness"), &Barrier::thickness, kWidths);
  barrier.share("wall-openness", formTr("Lets through"), &Barrier::openness);
  form.addNote(
      formTr("Share of direct sun that comes through: 0 % for masonry, about half for a "
             "picket fence."));
}

void fillForm(FieldForm& form, Document& document, Id<Tree> id) {
  ObjectForm<Tree> tree(form, document, id);
  const auto units = [&document] { return document.yard().settings.units; };
  tree.text("tree-name", formTr("Name"), &Tree::name);
  tree.field(
      "tree-height", formTr("Height"),
      [units](const Tree& t) { return lengthText(t.height, units()); },
      [units](Tree& t, const QString& typed) { return readTreeHeight(typed, units(), t); });
  tree.length("tree-crown-radius", formTr("Crown radius"), &Tree::crownRadius, kCrowns);
  tree.field(
      "tree-crown-base", formTr("Crown from"),
      [units](const Tree& t) { return lengthText(t.crownBase, units()); },
      [units](Tree& t, const QString& typed) { return readCrownBase(typed, units(), t); });
  tree.length("tree-trunk", formTr("Trunk"), &Tree::trunkDiameter, {Length(), Length::metres(5)});
  tree.choice("tree-crown", formTr("Shape"), &Tree::crown,
              {formTr("round"), formTr("cone"), formTr("column")});
  tree.tick("tree-evergreen", formTr("Evergreen"), &Tree::evergreen);
  addGrowth(form, tree, document);
  tree.share("tree-openness-leaf", formTr("Light in leaf"), &Tree::opennessLeaf);
  const Tree* now = objectIn(document.yard(), id);
  if (now && now->evergreen) return;
  tree.share("tree-openness-bare", formTr("Light when bare"), &Tree::opennessBare);
  tree.day("tree-leaf-on", formTr("In leaf from"), &Tree::leafOn);
  tree.day("tree-leaf-off", formTr("Bare from"), &Tree::leafOff);
}

}  // namespace tussock
